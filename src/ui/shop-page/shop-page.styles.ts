// The page in four widths and on paper; over 200 lines, because what changes from one to the next is read
// together.

import { css } from 'lit';

export const shopPageStyles = css`
  :host {
    display: block;
    max-inline-size: 102.5rem;
    margin-inline: auto;
    padding: 8px 32px 48px;
  }

  header {
    display: flex;
    align-items: center;
    gap: 0 16px;
    min-block-size: 44px;
  }

  h1 {
    margin: 0;
    font-size: var(--dc-text);
    font-weight: 600;
    line-height: 1.25rem;
  }

  .shops {
    display: flex;
    flex: none;
  }

  .shops button {
    white-space: nowrap;
  }

  .product {
    flex: 1;
    margin: 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
  }

  .work {
    display: grid;
    grid-template-columns: minmax(26.25rem, 1fr) minmax(45rem, 49rem);
    grid-template-areas:
      'sentence sentence'
      'plot drops'
      'foot drops'
      'run drops';
    grid-template-rows: auto 23.25rem auto 1fr;
    row-gap: 4px;
    column-gap: 40px;
  }

  .stage {
    display: contents;
  }

  .sentence p {
    margin: 0;
  }

  .sentence {
    grid-area: sentence;
    min-block-size: 5.625rem;
    margin: 4px 0 8px;
    font-size: 1.5rem;
    font-weight: 500;
    line-height: 1.875rem;
    letter-spacing: -0.01em;
    text-wrap: pretty;
  }

  dc-plot-panel {
    grid-area: plot;
  }

  dc-plot-foot-panel {
    grid-area: foot;
  }

  dc-drops-panel {
    grid-area: drops;
  }

  /* As high as the rest of the first screen, however long the list of drops is. */
  dc-run-panel {
    --dc-run-height: max(16.25rem, 100vh - 36.5rem, 1rem * var(--dc-run-rows, 12) + 4.25rem);

    grid-area: run;
  }

  .pictures {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    gap: 32px 56px;
    min-block-size: 400px;
    margin-block-start: 32px;
    padding-block-start: 16px;
    border-block-start: 1px solid var(--dc-rule);
  }

  footer {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    margin-block-start: 24px;
    padding-block-start: 20px;
    border-block-start: 1px solid var(--dc-rule);
  }

  dc-cautions {
    margin-block-start: 24px;
  }

  @media (max-width: 77.4375em) {
    .work {
      display: block;
    }

    .stage {
      display: block;
    }

    .sentence {
      min-block-size: 0;
    }

    dc-plot-panel {
      block-size: 23.75rem;
    }

    dc-drops-panel {
      margin-block-start: 16px;
    }

    .pictures {
      grid-template-columns: minmax(0, 1fr);
    }

    dc-run-panel {
      --dc-run-height: max(22.5rem, 1.625rem * var(--dc-run-rows, 12) + 8rem);

      margin-block-start: 24px;
    }
  }

  @media (max-width: 56.1875em) {
    .product {
      display: none;
    }

    h1 {
      flex: 1;
    }
  }

  @media (max-width: 37.4375em) {
    :host {
      padding: 0 16px 32px;
    }

    header {
      flex-wrap: wrap;
      justify-content: space-between;
      gap: 0;
    }

    header > * {
      margin-inline-start: -6px;
    }

    h1 {
      flex: 1 1 100%;
      margin-inline-start: 0;
      padding-block-start: 8px;
    }

    .sentence {
      min-block-size: 4.125rem;
      margin: 0 0 10px;
      font-size: 1.0625rem;
      line-height: 1.375rem;
      letter-spacing: 0;
    }

    dc-plot-panel {
      block-size: 12.5rem;
    }
  }

  @media (max-width: 37.4375em) and (min-height: 37.5em) {
    .stage {
      position: sticky;
      inset-block-start: 0;
      z-index: 1;
      margin-inline: -16px;
      padding: 4px 16px;
      background: var(--dc-paper);
      border-block-end: 1px solid var(--dc-rule);
    }
  }

  @media print {
    :host {
      padding: 0;
    }

    .shops {
      display: none;
    }

    .stage {
      position: static;
    }

    dc-plot-panel {
      block-size: auto;
    }

    .pictures {
      display: block;
    }

    .pictures > * {
      margin-block-end: 24px;
    }

    footer {
      gap: 4px;
    }
  }
`;
