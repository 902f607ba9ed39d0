// In a frame: tells the page around it how high this one is, now and whenever that
// changes, so that the frame need not scroll. Two messages with the same number:
//
//   {type: 'till-morning:height', height}                    ours
//   {sentinel: 'amp', type: 'embed-size', height}            what many hosts listen for
//
// Any page may know the height, so they go to whoever stands around; nothing else does.
if (window.parent !== window) {
  const root = document.documentElement;
  let last = 0;
  const tell = () => {
    // Of the content: `scrollHeight` would never be less than the frame.
    const height = Math.ceil(root.getBoundingClientRect().height);
    if (height === last) return;
    last = height;
    window.parent.postMessage({ type: 'till-morning:height', height }, '*');
    window.parent.postMessage({ sentinel: 'amp', type: 'embed-size', height }, '*');
  };
  new ResizeObserver(tell).observe(root);
}
