// What is seen where the reader's system decides on the colours.

/**
 * Gives a line for each control without an edge and each mark of a drawing that is not
 * seen on its ground: less than 3:1 (WCAG 2, 1.4.11). Grounds and grids are left out:
 * what they say stands beside them in words.
 */
export const unseen = (page) => page.evaluate(() => {
  const faults = new Set();
  const name = (one) => `${one.tagName.toLowerCase()}${one.id ? `#${one.id}` : ''}.${one.getAttribute('class') ?? ''} "${one.textContent.trim().slice(0, 30)}"`;
  const pen = document.createElement('canvas').getContext('2d', { willReadFrequently: true });
  /** Red, green, blue as drawn over a ground, whatever the notation. */
  const drawn = (colour, ground, opacity = 1) => {
    pen.globalAlpha = 1;
    pen.fillStyle = `rgb(${ground.join()})`;
    pen.fillRect(0, 0, 1, 1);
    pen.globalAlpha = opacity;
    pen.fillStyle = colour;
    pen.fillRect(0, 0, 1, 1);
    return [...pen.getImageData(0, 0, 1, 1).data.slice(0, 3)];
  };
  const light = (colour) => {
    const [r, g, b] = colour.map((c) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (one, other) => {
    const [low, high] = [light(one), light(other)].sort((a, b) => a - b);
    return (high + 0.05) / (low + 0.05);
  };
  const groundOf = (one) => {
    const layers = [];
    for (let at = one; at; at = at.parentElement) layers.push(getComputedStyle(at).backgroundColor);
    return layers.reverse().reduce((ground, layer) => drawn(layer, ground), [255, 255, 255]);
  };
  const visible = (one) => one.checkVisibility({ visibilityProperty: true, opacityProperty: true });
  let controls = 0;
  for (const one of document.querySelectorAll('input:not([type=checkbox], [type=file]), select, button:not(.picture-spot)')) {
    if (!visible(one)) continue;
    controls += 1;
    const its = getComputedStyle(one);
    const around = groundOf(one.parentElement);
    const edges = ['Top', 'Right', 'Bottom', 'Left'].filter((side) => its[`border${side}Style`] !== 'none'
      && Number.parseFloat(its[`border${side}Width`]) > 0 && contrast(drawn(its[`border${side}Color`], around), around) >= 3);
    if (!edges.length) faults.add(`no edge: ${name(one)}`);
    if (contrast(drawn(its.color, groundOf(one)), groundOf(one)) < 4.5 && !one.disabled) faults.add(`words not seen: ${name(one)}`);
    if (one.ariaPressed === 'true' && contrast(groundOf(one), around) < 3) faults.add(`pressed, and looks like the others: ${name(one)}`);
  }
  let marks = 0;
  for (const one of document.querySelectorAll('main figure svg :is(path, rect, line, circle, polyline, polygon, text)')) {
    if (!visible(one) || one.closest('defs, .code-sheet') || one.matches('.grid, .shade, .band, .layer, .bar-fade, .pic-axis, .pic-flow, .pic-tolerance, .pic-spilled')) continue;
    const its = getComputedStyle(one);
    const ground = groundOf(one.closest('figure'));
    const isText = one.tagName === 'text';
    const colours = [its.fill, ...(isText ? [] : [its.stroke])].filter((colour) => colour !== 'none');
    // A sign within a badge is drawn in the ground's colour.
    const on = one.matches('.pic-sign') ? drawn(getComputedStyle(document.body).color, ground) : ground;
    marks += 1;
    if (colours.length && !colours.some((colour) => contrast(drawn(colour, on, Number(its.opacity)), on) >= (isText ? 4.5 : 3))) faults.add(`not seen: ${name(one)} ${colours}`);
  }
  return { faults: [...faults], controls, marks };
});
