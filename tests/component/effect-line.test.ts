import { describe, it } from 'vitest';
import { setCollector } from '../../src/shop/edits/edit-shop.ts';
import { Session } from '../../src/state/session.ts';
import '../../src/ui/effect-line/effect-line.ts';
import { demoShop } from '../unit/state/demo-shop.ts';
import { drawn, expect, expectAccessible, text } from './harness.ts';
import { placeUnder } from './with-session.ts';

async function placeLine() {
  const session = new Session(demoShop(), ['planer'], 'us');
  return { session, line: await placeUnder(session, 'dc-effect-line') };
}

describe('the line that tells what an entry does', () => {
  it('is accessible', async () => {
    await expectAccessible((await placeLine()).line);
  });

  it('says the state in the page’s own sentence, and what filter and separator take', async () => {
    const { session } = await placeLine();
    expect(text(session.sentence.value).elements()).toHaveLength(1);
    expect(text(/the filter takes \d\.\d\d\sin\.\sw\.g\./).elements()).toHaveLength(1);
  });

  it('follows an edit at once', async () => {
    const { session } = await placeLine();
    session.edit(setCollector({ filter: { kind: 'none' } }));
    await drawn();
    expect(text(/the filter takes/).elements()).toHaveLength(0);
  });
});
