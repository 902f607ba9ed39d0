// After everything that a test does to a page, the page has its turns: what it shows
// follows a key in slices, so that a slow phone hears the next one (src/page/turns.rs).
// Who looks at a page sees it after that; so does a test.
//
// A turn is a message that the page posts to itself. Messages come in order, so as
// many of ours in a row let as many turns pass. It waits for no length of time.
const TURNS = 24;

const turns = (count) => new Promise((done) => {
  const channel = new MessageChannel();
  let left = count;
  channel.port1.onmessage = () => (left-- > 0 ? channel.port2.postMessage(0) : done(channel.port1.close()));
  channel.port2.postMessage(0);
});

async function settle(page) {
  // A frame that has gone meanwhile has nothing left to show.
  await Promise.all(page.frames().map((frame) => frame.evaluate(turns, TURNS).catch(() => {})));
}

const OF_LOCATOR = ['blur', 'check', 'click', 'dispatchEvent', 'fill', 'press', 'selectOption', 'setInputFiles', 'uncheck'];
const OF_PAGE = ['click', 'fill', 'press'];
const OF_KEYBOARD = ['insertText', 'press', 'type'];
const OF_MOUSE = ['click', 'down', 'move', 'up'];

const wrapped = new WeakSet();

function after(owner, names, pageOf) {
  if (wrapped.has(owner)) return;
  wrapped.add(owner);
  for (const name of names) {
    const act = owner[name];
    owner[name] = async function (...given) {
      const result = await act.apply(this, given);
      await settle(pageOf(this));
      return result;
    };
  }
}

/** From now on every action on this page, and on any locator, ends with the page's turns. */
export function settleAfterActions(page) {
  after(Object.getPrototypeOf(page.locator('html')), OF_LOCATOR, (locator) => locator.page());
  after(page, OF_PAGE, () => page);
  after(page.keyboard, OF_KEYBOARD, () => page);
  after(page.mouse, OF_MOUSE, () => page);
}
