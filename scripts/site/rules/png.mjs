// The size of an image in pixels, from its own header.

/**
 * @param {Buffer} bytes
 * @returns {{ width: number, height: number }} zeros when it is no PNG
 */
export function sizeOfPng(bytes) {
  const isPng = bytes.length >= 24 && bytes.toString('latin1', 1, 4) === 'PNG';
  return isPng
    ? { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) }
    : { width: 0, height: 0 };
}
