import { describe, expect, it } from 'vitest';
import { pictureText } from '../../../src/plot/picture-text.ts';

const frame = { width: 100, height: 60, title: 'Flow < 600 & "rising"' };
const drawing = {
  name: 'g',
  attributes: { fill: 'rgb(0, 0, 0)' },
  children: [
    { name: 'path', attributes: { d: 'M0,0L9,9' }, children: [] },
    { name: 'text', attributes: { x: '4' }, children: ['5 < 6 & 7', ' cfm'] },
  ],
};

describe('a picture as a file', () => {
  const text = pictureText(drawing, frame);

  it('stands by itself: a size, a title, white paper, and nothing fetched or styled', () => {
    expect(text).toContain('width="132" height="92" viewBox="-16 -16 132 92"');
    expect(text).toContain('<title>Flow &lt; 600 &amp; &quot;rising&quot;</title>');
    expect(text).toContain('<rect x="-16" y="-16" width="132" height="92" fill="#fff"/>');
    expect(text).not.toMatch(/style|class|url\(http|<script|var\(/);
  });

  it('writes elements in order, with their texts unharmed', () => {
    expect(text).toContain(
      '<g fill="rgb(0, 0, 0)"><path d="M0,0L9,9"/><text x="4">5 &lt; 6 &amp; 7 cfm</text></g>',
    );
  });

  it('writes a caption under the drawing, in lines no wider than it, on paper of its own', () => {
    const captioned = pictureText(drawing, { ...frame, caption: 'Speeds in ft/min, all of them' });
    const lines = [...captioned.matchAll(/<text x="0" y="(\d+)"[^>]*>([^<]*)</g)];
    expect(lines.map(([, , line]) => line).join(' ')).toBe('Speeds in ft/min, all of them');
    expect(lines.length).toBeGreaterThan(1);
    const [height] = /(?<= height=")\d+/.exec(captioned) ?? [];
    for (const [i, [, y, line = '']] of lines.entries()) {
      expect(line.length).toBeLessThanOrEqual(15);
      expect(Number(y)).toBeGreaterThan(i === 0 ? frame.height : Number(lines[i - 1]?.[1]) + 11);
      expect(Number(y)).toBeLessThan(Number(height) - 16);
    }
  });
});
