// Records made as the app makes them: JSON with sorted keys, under the first 128 bits of its SHA-256.

import { createHash } from "node:crypto";

const sorted = (value) =>
  Array.isArray(value)
    ? value.map(sorted)
    : value !== null && typeof value === "object"
      ? Object.fromEntries(Object.keys(value).sort().map((key) => [key, sorted(value[key])]))
      : value;

/** A revision as it lies in the store: [key, text]. */
export function sealed(record) {
  const text = JSON.stringify(sorted(record));
  return [`haulm/revision/${createHash("sha256").update(text).digest("hex").slice(0, 32)}`, text];
}
