// Stands in for d3-color on the page. The scales there map numbers only; what reads and mixes colours
// would be some kilobytes of the first load that never run. d3-interpolate asks `color` whether a text
// is one, and its other names are called for colours alone.

/** No text is a colour. */
export function color(): null {
  return null;
}

function noColour(): never {
  throw new RangeError('colours are not interpolated on this page');
}

export {
  noColour as cubehelix,
  noColour as hcl,
  noColour as hsl,
  noColour as lab,
  noColour as rgb,
};
