import { describe, expect, it } from 'vitest';
import { History } from '../../../src/state/history.ts';

const add = (text: string) => (document: string) => document + text;

describe('a history', () => {
  it('undoes and redoes edits one by one', () => {
    const history = new History('a');
    history.commit(add('b'));
    history.commit(add('c'));
    history.undo();
    expect(history.present.value).toBe('ab');
    history.undo();
    expect(history.present.value).toBe('a');
    expect(history.canUndo.value).toBe(false);
    history.redo();
    history.redo();
    expect(history.present.value).toBe('abc');
    expect(history.canRedo.value).toBe(false);
  });

  it('undoes a run of edits with one key as one, until it is sealed', () => {
    const history = new History('a');
    history.commit(add('1'), 'drag');
    history.commit(add('2'), 'drag');
    history.seal();
    history.commit(add('3'), 'drag');
    history.undo();
    expect(history.present.value).toBe('a12');
    history.undo();
    expect(history.present.value).toBe('a');
  });

  it('merges neither different keys nor edits without one', () => {
    const history = new History('a');
    history.commit(add('1'), 'x');
    history.commit(add('2'), 'y');
    history.commit(add('3'));
    history.commit(add('4'));
    for (const expected of ['a123', 'a12', 'a1', 'a']) {
      history.undo();
      expect(history.present.value).toBe(expected);
    }
  });

  it('forgets what was taken back once something else is done', () => {
    const history = new History('a');
    history.commit(add('b'));
    history.undo();
    history.commit(add('c'));
    history.redo();
    expect(history.present.value).toBe('ac');
  });

  it('takes an edit that changes nothing for none', () => {
    const history = new History('a');
    history.commit((document) => document);
    expect(history.canUndo.value).toBe(false);
  });

  it('keeps as many documents as it is told to', () => {
    const history = new History('', 3);
    for (const letter of 'abcde') history.commit(add(letter));
    for (let i = 0; i < 10; i++) history.undo();
    expect(history.present.value).toBe('ab');
    expect(() => new History('', 0)).toThrow(RangeError);
  });

  it('does nothing where there is nothing to undo or redo', () => {
    const history = new History('a');
    history.undo();
    history.redo();
    expect(history.present.value).toBe('a');
  });
});
