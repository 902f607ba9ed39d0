// Starts the page and, where it cannot start, says so on <html>: the style sheet
// can then show the shell's own words. `data-ready` is the page's to set.
export function start(begin) {
  begin().catch((error) => {
    document.documentElement.dataset.failed = '';
    throw error;
  });
}
