// A quiet button: words on the paper with a hairline under them, in a target that a thumb can hit.

import { css } from 'lit';

export const buttonStyles = css`
  button {
    appearance: none;
    min-block-size: 44px;
    min-inline-size: 44px;
    margin: 0;
    padding: 0 6px;
    border: 0;
    background: none;
    color: var(--dc-ink);
    font: inherit;
    font-size: var(--dc-small);
    cursor: pointer;
    touch-action: manipulation;
  }

  button > span {
    padding-block-end: 2px;
    border-block-end: 1px solid var(--dc-rule-strong);
  }

  button:hover > span {
    border-block-end-color: var(--dc-ink);
  }

  button[aria-pressed='true'] > span {
    border-block-end: 2px solid var(--dc-air);
    padding-block-end: 1px;
  }

  button:disabled {
    color: var(--dc-ink-soft);
    cursor: default;
  }

  button:disabled > span {
    border-block-end-color: transparent;
  }
`;
