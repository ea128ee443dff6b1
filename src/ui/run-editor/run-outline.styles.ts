import { css } from 'lit';

export const runOutlineStyles = css`
  :host {
    display: block;
    container-type: inline-size;
  }

  ul {
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .rest {
    display: none;
  }

  .row {
    appearance: none;
    display: flex;
    align-items: stretch;
    inline-size: 100%;
    min-block-size: 44px;
    margin: 0;
    padding: 0 8px;
    border: 0;
    background: none;
    color: inherit;
    font: inherit;
    text-align: start;
    cursor: pointer;
    touch-action: manipulation;
  }

  .row:hover .name {
    text-decoration: underline;
    text-decoration-color: var(--dc-rule-strong);
    text-underline-offset: 4px;
  }

  .row[aria-expanded='true'] {
    background: var(--dc-air-wash);
  }

  .row:focus-visible {
    outline-offset: -2px;
  }

  .rails {
    display: flex;
    flex: none;
  }

  .rail,
  .spot {
    position: relative;
    inline-size: 20px;
  }

  /* The pipe: a line through every row, and a dot for the part. */
  .rail::before,
  .spot::before {
    content: '';
    position: absolute;
    inset-block: 0;
    inset-inline-start: 9px;
    border-inline-start: 2px solid var(--dc-rule-strong);
  }

  .spot::after {
    content: '';
    position: absolute;
    inset-block-start: calc(50% - 4px);
    inset-inline-start: 6px;
    inline-size: 8px;
    block-size: 8px;
    border: 2px solid var(--dc-ink-soft);
    border-radius: 50%;
    background: var(--dc-paper);
  }

  .row.drop .spot::after {
    border-radius: 0;
    background: var(--dc-ink-soft);
  }

  :host([order='flow']) .spot.end::before,
  :host([order='outward']) .spot.joins::before {
    inset-block-start: 50%;
  }

  :host([order='outward']) .spot.end::before,
  :host([order='flow']) .spot.joins::before {
    inset-block-end: 50%;
  }

  .spot.joins {
    background: linear-gradient(var(--dc-rule-strong), var(--dc-rule-strong)) no-repeat 0 50% / 10px 2px;
  }

  .spot.joins::before {
    box-sizing: content-box;
  }

  .rail:has(+ .joins) {
    background: linear-gradient(var(--dc-rule-strong), var(--dc-rule-strong)) no-repeat 100% 50% / 10px
      2px;
  }

  .words {
    display: flex;
    flex: 1;
    flex-wrap: wrap;
    align-content: center;
    align-items: baseline;
    column-gap: 12px;
    min-inline-size: 0;
    padding: 4px 0 4px 6px;
    line-height: 1.25rem;
  }

  .name {
    overflow-wrap: anywhere;
  }

  .drop .name {
    font-weight: 600;
  }

  .facts {
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    font-variant-numeric: tabular-nums;
  }

  .form {
    padding: 8px 8px 24px 12px;
    border-inline-start: 2px solid var(--dc-air);
  }

  /* Where there is room, the form stands beside the rows instead of between them. */
  @container (min-width: 56.25em) {
    ul {
      display: grid;
      grid-template-columns: minmax(0, 5fr) minmax(0, 7fr);
      grid-template-rows: repeat(var(--rows), auto) 1fr;
      column-gap: 24px;
    }

    li {
      display: contents;
    }

    .row {
      grid-column: 1;
    }

    .rest {
      display: block;
      grid-column: 1;
    }

    .form {
      grid-column: 2;
      grid-row: 1 / -1;
      align-self: start;
      padding-block: 0 8px;
      padding-inline: 24px 0;
    }
  }

  @container (min-width: 56.25em) {
    @media (min-height: 43.75em) {
      .form {
        position: sticky;
        inset-block-start: 8px;
      }
    }
  }
`;
