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
    min-block-size: 56px;
    margin: 0;
    font-size: 20px;
    font-weight: 500;
    line-height: 28px;
    text-wrap: pretty;
  }

  .said {
    min-block-size: 20px;
    max-inline-size: 90ch;
    margin: 0;
    font-size: var(--dc-small);
    font-weight: 600;
    line-height: 20px;
  }

  .said.refused {
    color: var(--dc-duct);
  }

  .note {
    max-inline-size: 90ch;
    margin: 0;
    color: var(--dc-ink-soft);
    font-size: var(--dc-small);
    line-height: 20px;
  }

  /* Beside one another where there is room; the words still come before the picture. */
  @container (min-width: 1180px) {
    .answer {
      grid-template-columns: minmax(0, 1fr) minmax(0, 480px);
    }

    .answer > :is(.sentence, .said, .whole) {
      grid-column: 1 / -1;
    }
  }

  @media (max-width: 599px) {
    .sentence {
      font-size: 17px;
      line-height: 24px;
    }
  }
`;
