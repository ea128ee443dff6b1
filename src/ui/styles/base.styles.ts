// What every element shares: boxes that count their border, one focus ring, text for ears only, and what
// a finger unfolds.

import { css } from 'lit';

export const baseStyles = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }

  :host([hidden]),
  [hidden] {
    display: none !important;
  }

  :focus-visible {
    outline: 2px solid var(--dc-focus);
    outline-offset: 2px;
    border-radius: 2px;
  }

  .for-ears {
    position: absolute;
    inline-size: 1px;
    block-size: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  summary {
    min-block-size: 44px;
    padding-block: 10px;
    line-height: 1.5rem;
    cursor: pointer;
  }

  summary.small {
    padding-block: 12px;
    font-size: var(--dc-small);
    line-height: 1.25rem;
  }

  svg {
    display: block;
  }

  svg text {
    font-family: inherit;
    font-variant-numeric: tabular-nums;
    text-rendering: geometricPrecision;
  }
`;
