// Fields as every form of the page has them: the label above, a hairline around, 44 px for a thumb,
// and the problem under the field in words.

import { css } from 'lit';

export const fieldStyles = css`
  .field {
    display: grid;
    gap: 2px;
    min-inline-size: 0;
  }

  .field > label {
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  .box {
    display: flex;
    align-items: center;
    min-block-size: 44px;
    border: 1px solid var(--dc-rule-strong);
    border-radius: 2px;
    background: var(--dc-paper);
  }

  .box:focus-within {
    outline: 2px solid var(--dc-focus);
    outline-offset: 1px;
  }

  .box :focus-visible {
    outline: none;
  }

  /* A field in a box of its own is laid out alone when its text changes; as a part of a row it is not. */
  .room {
    flex: 1;
    min-inline-size: 0;
  }

  .box input,
  select,
  input.line {
    scroll-margin-block-start: var(--dc-sticky, 0);
  }

  .box input {
    display: block;
    inline-size: 100%;
    min-inline-size: 0;
    block-size: 2.625rem;
    margin: 0;
    padding: 0 8px;
    border: 0;
    contain: size layout;
    background: none;
    color: inherit;
    font: inherit;
    font-variant-numeric: tabular-nums;
  }

  select,
  input.line {
    inline-size: 100%;
    min-inline-size: 0;
    min-block-size: 44px;
    margin: 0;
    padding: 0 8px;
    border: 1px solid var(--dc-rule-strong);
    border-radius: 2px;
    background: var(--dc-paper);
    color: inherit;
    font: inherit;
  }

  .suffix {
    padding-inline-end: 8px;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    white-space: nowrap;
  }

  .hint,
  .problem {
    margin: 0;
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  .hint {
    color: var(--dc-ink-soft);
  }

  .problem {
    color: var(--dc-duct);
    font-weight: 600;
  }

  .box:has([aria-invalid='true']),
  [aria-invalid='true'].line {
    border-color: var(--dc-duct);
    border-width: 2px;
  }
`;
