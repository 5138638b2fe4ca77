/** The platform's own decoder, which Node and every page have; `shared/` is compiled without either's types. */
declare const TextDecoder: new (
  label: string,
  options: { fatal: boolean },
) => { decode(bytes: Uint8Array): string };

/** The text of UTF-8 bytes without a byte-order mark; null where they are not UTF-8. */
export function textOfUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
