// Blanks out comments and the insides of strings in TypeScript text, keeping every position,
// so that a plain search for `import` or a bracket finds code and nothing else.

/** The text twice, each as long as the original. */
export interface MaskedSource {
  /** Comments blanked, strings kept. */
  readonly code: string;
  /** Comments blanked, and the insides of strings, templates and regular expressions too. */
  readonly bare: string;
}

const blank = (text: string) => text.replace(/[^\n]/g, ' ');

export function maskSource(text: string): MaskedSource {
  let code = '';
  let bare = '';
  const templateDepths: number[] = []; // brace depth at which each open `${` returns to its text
  let depth = 0;
  let at = 0;

  const take = (length: number, inCode: 'kept' | 'blank', inBare: 'kept' | 'blank' | 'quoted') => {
    const piece = text.slice(at, at + length);
    code += inCode === 'kept' ? piece : blank(piece);
    bare += inBare === 'kept' ? piece : inBare === 'blank' ? blank(piece) : emptied(piece);
    at += length;
  };

  while (at < text.length) {
    const rest = text.slice(at, at + 2);
    const char = text.charAt(at);
    if (rest === '//') take(lengthUntil(text, at, '\n'), 'blank', 'blank');
    else if (rest === '/*') take(lengthThrough(text, at, '*/'), 'blank', 'blank');
    else if (char === "'" || char === '"') take(quotedLength(text, at, char), 'kept', 'quoted');
    else if (char === '`' || (char === '}' && templateDepths.at(-1) === depth)) {
      if (char === '}') templateDepths.pop();
      const length = templateLength(text, at);
      if (text.charAt(at + length - 1) === '{') templateDepths.push(depth);
      take(length, 'kept', 'quoted');
    } else if (char === '/' && startsExpression(bare)) {
      take(patternLength(text, at), 'kept', 'quoted');
    } else {
      if (char === '{') depth += 1;
      if (char === '}') depth -= 1;
      take(1, 'kept', 'kept');
    }
  }
  return { code, bare };
}

/** A string's quotes stay and its inside goes, so that brackets in it are not counted. */
const emptied = (piece: string) => (piece.length < 2 ? piece : `"${blank(piece.slice(1, -1))}"`);

const lengthUntil = (text: string, at: number, mark: string) => {
  const end = text.indexOf(mark, at);
  return (end < 0 ? text.length : end) - at;
};

const lengthThrough = (text: string, at: number, mark: string) => {
  const end = text.indexOf(mark, at + 2);
  return (end < 0 ? text.length : end + mark.length) - at;
};

function quotedLength(text: string, at: number, quote: string): number {
  let end = at + 1;
  while (end < text.length && text.charAt(end) !== quote) end += text.charAt(end) === '\\' ? 2 : 1;
  return end + 1 - at;
}

/** From a backtick or a closing brace to the next `${` or the closing backtick. */
function templateLength(text: string, at: number): number {
  let end = at + 1;
  while (end < text.length && text.charAt(end) !== '`' && !text.startsWith('${', end)) {
    end += text.charAt(end) === '\\' ? 2 : 1;
  }
  return end + (text.startsWith('${', end) ? 2 : 1) - at;
}

/** A regular expression, in which a slash between square brackets does not end it. */
function patternLength(text: string, at: number): number {
  let end = at + 1;
  let inClass = false;
  while (end < text.length && (inClass || text.charAt(end) !== '/')) {
    if (text.charAt(end) === '[') inClass = true;
    if (text.charAt(end) === ']') inClass = false;
    end += text.charAt(end) === '\\' ? 2 : 1;
  }
  return end + 1 - at;
}

/** After an operator, an opening bracket or `return`, a slash can't mean division. */
const startsExpression = (before: string) =>
  /(?:^|[=(,:[!&|?{};+\-*%~^<>]|\breturn|\btypeof)\s*$/.test(before.slice(-40));
