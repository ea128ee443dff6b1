// The keys for undo and redo, which work anywhere on the page but in a field that is being typed in:
// there they belong to the text.

/** Kinds of input that hold no text to undo. */
const WITHOUT_TEXT: ReadonlySet<string> = new Set([
  'button',
  'checkbox',
  'file',
  'radio',
  'range',
  'reset',
  'submit',
]);

/** What a key asks for. */
export type HistoryWish = 'undo' | 'redo' | undefined;

/**
 * What a key asks for: Ctrl or Cmd with Z, with Shift for redo; Ctrl with Y as well.
 *
 * @param event - a key pressed
 * @returns undo, redo or neither
 */
export function historyWish(event: KeyboardEvent): HistoryWish {
  const { ctrlKey, metaKey, altKey, shiftKey } = event;
  if (ctrlKey === metaKey || altKey || isTyping(event.composedPath()[0])) return undefined;
  switch (event.key.toLowerCase()) {
    case 'z':
      return shiftKey ? 'redo' : 'undo';
    case 'y':
      return ctrlKey && !shiftKey ? 'redo' : undefined;
    default:
      return undefined;
  }
}

function isTyping(target: EventTarget | undefined): boolean {
  if (target instanceof HTMLInputElement) return !WITHOUT_TEXT.has(target.type);
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLElement && target.isContentEditable)
  );
}
