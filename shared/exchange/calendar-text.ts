/** Bytes of one sign in UTF-8. */
const bytesOf = (sign: string): number => {
  const code = sign.codePointAt(0) ?? 0;
  return code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
};

/** One content line. Source: RFC 5545, section 3.1. */
export const contentLine = (name: string, value: string): string => rawLine(name, `:${value}`);

/** One content line whose parameters and value are given as they stand behind the name, folded so that no line is longer than 75 bytes and no sign is cut. Source: RFC 5545, section 3.1. */
export function rawLine(name: string, rest: string): string {
  let [out, bytes] = ['', 0];
  for (const sign of `${name}${rest}`) {
    const more = bytesOf(sign);
    if (bytes + more > 75) {
      out += '\r\n ';
      bytes = 1;
    }
    out += sign;
    bytes += more;
  }
  return `${out}\r\n`;
}

/** Text as a value: backslash, semicolon, comma and line ends escaped, other control signs left out. Source: RFC 5545, section 3.3.11. */
export const textValue = (text: string): string => Array.from(text.replaceAll('\r\n', '\n'))
  .filter((sign) => sign === '\n' || (sign.codePointAt(0) ?? 0) >= 0x20).join('')
  .replaceAll('\\', '\\\\').replaceAll(';', '\\;').replaceAll(',', '\\,').replaceAll('\n', '\\n');
