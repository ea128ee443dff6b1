// A question with its answer: a sentence first, then tables, then a picture.

import { css } from 'lit';

export const answerStyles = css`
  :host {
    display: block;
    min-inline-size: 0;
    container-type: inline-size;
  }

  .answer {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px 32px;
    margin-block-start: 8px;
  }

  .tables,
  .picture {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    align-content: start;
    gap: 8px;
    min-inline-size: 0;
  }

  .sentence {
    max-inline-size: 72ch;
    min-block-size: 3.5rem;
    margin: 0;
    font-size: 1.25rem;
    font-weight: 500;
    line-height: 1.75rem;
    text-wrap: pretty;
  }

  .said {
    min-block-size: 1.25rem;
    max-inline-size: 90ch;
    margin: 0;
    font-size: var(--dc-small);
    font-weight: 600;
    line-height: 1.25rem;
  }

  .said.refused {
    color: var(--dc-duct);
  }

  .note {
    max-inline-size: 90ch;
    margin: 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 1.25rem;
  }

  /* Beside one another where there is room; the words still come before the picture. */
  @container (min-width: 73.75em) {
    .answer:not(.stacked) {
      grid-template-columns: minmax(0, 1fr) minmax(0, 28rem);
    }

    .answer > :is(.sentence, .said, .whole) {
      grid-column: 1 / -1;
    }

    .answer:not(.stacked) > .tables {
      --dc-words: 26ch;
    }
  }

  @media (max-width: 37.4375em) {
    .sentence {
      font-size: 1.0625rem;
      line-height: 1.5rem;
    }
  }
`;
