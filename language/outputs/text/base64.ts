// Base64 of a digest that is written in hexadecimal, as a content policy wants it.

export function base64OfHex(hex: string): string {
  let bytes = "";
  for (let i = 0; i < hex.length; i += 2) bytes += String.fromCharCode(Number.parseInt(hex.slice(i, i + 2), 16));
  return btoa(bytes);
}
