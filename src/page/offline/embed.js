// For a page that frames this one: gives each frame the height that the page in it
// asks for (frame.js). The attribute, not a style: strict policies refuse no attribute.
addEventListener('message', ({ data, source }) => {
  if (data?.type !== 'till-morning:height' || !(data.height > 0 && data.height < 1e5)) return;
  for (const frame of document.querySelectorAll('iframe')) {
    if (frame.contentWindow === source) frame.height = data.height;
  }
});
