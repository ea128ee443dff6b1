// How the forms of the run are laid out: fields side by side as far as there is room.

import { css } from 'lit';

export const formStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 10rem), 1fr));
    gap: 12px 16px;
    align-items: start;
  }

  .fields + .fields,
  dc-hood-choice + .fields {
    margin-block-start: 12px;
  }

  .wide {
    grid-column: 1 / -1;
  }

  h4 {
    margin: 20px 0 4px;
    padding-block-start: 8px;
    border-block-start: 1px solid var(--dc-rule);
    font-size: var(--dc-small);
    font-weight: 600;
    line-height: 1.25rem;
  }

  h4:first-child {
    margin-block-start: 0;
  }

  /* A list of long entries takes a line of its own on a phone. */
  @container (max-width: 32.5em) {
    .fields > dc-choice-field,
    .fields > dc-reducer-choice {
      grid-column: 1 / -1;
    }
  }

  .source {
    margin: 4px 0 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.125rem;
  }

  .source b {
    color: var(--dc-ink);
    font-weight: 400;
    font-variant-numeric: tabular-nums;
  }

  .check {
    display: flex;
    align-items: center;
    gap: 10px;
    min-block-size: 44px;
    inline-size: fit-content;
    cursor: pointer;
  }

  .check input {
    inline-size: 1.25rem;
    block-size: 1.25rem;
    margin: 0;
    accent-color: var(--dc-air);
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    margin-inline-start: -6px;
  }
`;
