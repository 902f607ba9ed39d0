// The few places where the build reads or changes HTML. It is our own shell, as
// Trunk has left it; where a piece is not there exactly once, the build stops.
import { createHash } from 'node:crypto';

/** Replaces the one occurrence of `what`; any other count is an error. */
export function replaceOnce(text, what, by) {
  const parts = text.split(what);
  if (parts.length !== 2) throw new Error(`expected once, found ${parts.length - 1} times: ${what}`);
  return parts.join(by);
}

export const element = {
  style: (name) => `<link rel="stylesheet" href="./${name}">`,
  script: (name) => `<script type="module" src="./${name}"></script>`,
  // The fetch of the wasm begins with the page, not after the script has come.
  preload: (name) => `<link rel="preload" href="./${name}" as="fetch" type="application/wasm" crossorigin>`,
};

const links = (html) => [...html.matchAll(/[ \t]*<link\b[^>]*>\n?/g)].map(([tag]) => tag);
const attribute = (tag, name) => tag.match(new RegExp(`\\b${name}="([^"]*)"`))?.[1];
const file = (tag) => attribute(tag, 'href').replace(/^\.\//, '');
const without = (html, tags) => tags.reduce((text, tag) => replaceOnce(text, tag, ''), html);

/** What Trunk staged: names of its files, and the shell with none of them in it. */
export function staged(html) {
  const mark = html.match(/<script data-glue="([^"]+)" data-wasm="([^"]+)"><\/script>/);
  if (!mark) throw new Error("the staged index.html has no mark from Trunk.toml's pattern_script");
  const sheets = links(html).filter((tag) => attribute(tag, 'rel') === 'stylesheet');
  if (!sheets.length) throw new Error('the staged index.html links no style sheet');
  const rest = replaceOnce(without(html, sheets), mark[0], '').replace(/\s*<\/head>/, '\n</head>');
  return {
    glue: mark[1],
    wasm: mark[2],
    styles: sheets.map(file),
    withHead: (head, shell = rest) => replaceOnce(shell, '</head>', `  ${head}\n</head>`),
    rest,
  };
}

/**
 * The file's own content policy: this style and this script, and nothing that could be
 * sent anywhere. Wherever the file is opened, the browser holds it to that.
 */
function policy(style, script) {
  const hash = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  const rules = [
    "default-src 'none'",
    `script-src ${hash(script)} 'wasm-unsafe-eval'`,
    `style-src ${hash(style)}`,
    'img-src data: blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ];
  return `<meta http-equiv="Content-Security-Policy" content="${rules.join('; ')}">`;
}

/** The page as one file: style, script, mark and licence inside, nothing asked of a server. */
export function oneFile(page, { css, script, read, licence }) {
  const rel = (tag) => attribute(tag, 'rel');
  const hosted = links(page.rest).filter((tag) => ['manifest', 'apple-touch-icon', 'icon'].includes(rel(tag)));
  const svg = hosted.find((tag) => rel(tag) === 'icon' && file(tag).endsWith('.svg'));
  const icon = svg ? `<link rel="icon" href="data:image/svg+xml;base64,${read(file(svg)).toString('base64')}">\n  ` : '';
  if (/<\/style/i.test(css) || /<\/script/i.test(script)) throw new Error('a closing tag inside style or script');
  const [style, body] = [css.trim(), script.trim()];
  const head = `${icon}${policy(style, body)}\n  <style>${style}</style>\n  <script type="module">${body}</script>`;
  if (licence.includes('--')) throw new Error('the licence would end its comment');
  const shell = replaceOnce(page.rest, '<!doctype html>', `<!doctype html>\n<!--\n${licence}-->`);
  return page.withHead(head, without(shell, hosted));
}
