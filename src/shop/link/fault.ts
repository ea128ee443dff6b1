// A link that can't be read. Thrown inside the reading of links only, and caught there.

export class LinkFault extends Error {}
