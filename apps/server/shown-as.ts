/**
 * The header of a file that a browser may show, with its name as RFC 6266 has it: plain letters for old readers, and
 * the whole name in UTF-8 beside them.
 */
export function shownAs(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\w .-]/g, "-");
  const whole = encodeURIComponent(name).replace(/['()*]/g, (sign) => `%${sign.charCodeAt(0).toString(16)}`);
  return `inline; filename="${plain}"; filename*=UTF-8''${whole}`;
}
