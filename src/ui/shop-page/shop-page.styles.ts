import { css } from 'lit';

export const shopPageStyles = css`
  :host {
    display: block;
    max-inline-size: 1640px;
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
    line-height: 20px;
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
    grid-template-columns: minmax(420px, 1fr) minmax(720px, 784px);
    grid-template-areas:
      'sentence sentence'
      'plot drops'
      'foot drops'
      'run drops';
    grid-template-rows: auto 384px auto minmax(260px, 1fr);
    row-gap: 4px;
    column-gap: 40px;
  }

  .stage {
    display: contents;
  }

  .sentence {
    grid-area: sentence;
    max-inline-size: 76ch;
    min-block-size: 72px;
    margin: 4px 0 12px;
    font-size: 28px;
    font-weight: 500;
    line-height: 36px;
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
    grid-area: run;
    max-block-size: max(260px, 100vh - 580px, 16px * var(--dc-run-rows, 12) + 68px);
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
    gap: 24px;
    margin-block-start: 24px;
    padding-block-start: 20px;
    border-block-start: 1px solid var(--dc-rule);
  }

  @media (max-width: 1239px) {
    .work {
      display: block;
    }

    .stage {
      display: block;
    }

    .sentence {
      font-size: 26px;
      line-height: 34px;
    }

    dc-plot-panel {
      block-size: 380px;
    }

    dc-drops-panel {
      margin-block-start: 16px;
    }

    .pictures {
      grid-template-columns: minmax(0, 1fr);
    }

    dc-run-panel {
      block-size: max(360px, 22px * var(--dc-run-rows, 12) + 128px);
      max-block-size: none;
      margin-block-start: 24px;
    }
  }

  @media (max-width: 899px) {
    .product {
      display: none;
    }

    h1 {
      flex: 1;
    }
  }

  @media (max-width: 599px) {
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
      min-block-size: 66px;
      margin: 0 0 4px;
      font-size: 17px;
      line-height: 22px;
      letter-spacing: 0;
    }

    dc-plot-panel {
      block-size: 200px;
    }
  }

  @media (max-width: 599px) and (min-height: 600px) {
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
  }
`;
