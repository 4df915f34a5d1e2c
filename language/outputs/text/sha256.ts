// SHA-256 (FIPS 180-4) of a text, in plain arithmetic: the compiler also runs where there is no Node and nothing may be awaited.

/** Words of 32 bits with a sign all through: the engine keeps those as they are, and others above 2^31 as numbers with a point. */
const K = constants();

/** The first 64 x 32 bits of the fractional parts of the cube roots of the primes, from the primes themselves. */
function constants(): Int32Array {
  const k = new Int32Array(64);
  let n = 2;
  for (let i = 0; i < 64; n++) {
    let prime = true;
    for (let d = 2; d * d <= n; d++) if (n % d === 0) prime = false;
    if (prime) k[i++] = root(n, 3);
  }
  return k;
}

/** 32 bits behind the point of a square or cube root, by whole numbers, so that no machine rounds otherwise. */
function root(n: number, power: 2 | 3): number {
  const shift = 32n,
    target = BigInt(n) << (shift * BigInt(power));
  let low = 0n,
    high = BigInt(n) << shift;
  while (low < high) {
    const middle = (low + high + 1n) >> 1n;
    if (middle ** BigInt(power) <= target) low = middle;
    else high = middle - 1n;
  }
  return Number(low & 0xffffffffn);
}

/** The first 32 bits of the fractional parts of the square roots of the first eight primes. */
const start = Int32Array.from([2, 3, 5, 7, 11, 13, 17, 19], (prime) => root(prime, 2));

/** The digest as 64 hexadecimal digits of the text's UTF-8. */
export function sha256(text: string): string {
  const bytes = new TextEncoder().encode(text),
    length = ((bytes.length + 9 + 63) >> 6) << 6,
    data = new Uint8Array(length),
    view = new DataView(data.buffer);
  data.set(bytes);
  data[bytes.length] = 0x80;
  view.setUint32(length - 8, Math.floor(bytes.length / 0x20000000));
  view.setUint32(length - 4, (bytes.length * 8) >>> 0);
  const h = start.slice(),
    w = new Int32Array(64);
  for (let block = 0; block < length; block += 64) {
    for (let i = 0; i < 16; i++) w[i] = view.getInt32(block + i * 4);
    mix(h, w);
  }
  return [...h].map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

/** One block of 16 words, of which the other 48 are made, into the digest. Turns to the right are written out: a first page hashes before anything is compiled. */
function mix(h: Int32Array, w: Int32Array): void {
  for (let i = 16; i < 64; i++) {
    const a = w[i - 15]!,
      b = w[i - 2]!,
      one = ((a >>> 7) | (a << 25)) ^ ((a >>> 18) | (a << 14)) ^ (a >>> 3),
      two = ((b >>> 17) | (b << 15)) ^ ((b >>> 19) | (b << 13)) ^ (b >>> 10);
    w[i] = w[i - 16]! + one + w[i - 7]! + two;
  }
  let a = h[0]!,
    b = h[1]!,
    c = h[2]!,
    d = h[3]!,
    e = h[4]!,
    f = h[5]!,
    g = h[6]!,
    z = h[7]!;
  for (let i = 0; i < 64; i++) {
    const ofE = ((e >>> 6) | (e << 26)) ^ ((e >>> 11) | (e << 21)) ^ ((e >>> 25) | (e << 7)),
      ofA = ((a >>> 2) | (a << 30)) ^ ((a >>> 13) | (a << 19)) ^ ((a >>> 22) | (a << 10)),
      one = (z + ofE + ((e & f) ^ (~e & g)) + K[i]! + w[i]!) | 0,
      two = (ofA + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    z = g;
    g = f;
    f = e;
    e = (d + one) | 0;
    d = c;
    c = b;
    b = a;
    a = (one + two) | 0;
  }
  h[0]! += a;
  h[1]! += b;
  h[2]! += c;
  h[3]! += d;
  h[4]! += e;
  h[5]! += f;
  h[6]! += g;
  h[7]! += z;
}
