// Lets @open-wc/testing run under Vitest. It imports a socket that only its own runner serves,
// so this plugin answers for that socket: "not that runner", which it handles by itself.
import type { Plugin } from 'vite';

const socket = '__web-dev-server__web-socket.js';

export function openWcTesting(): Plugin {
  return {
    name: 'open-wc-testing',
    enforce: 'pre',
    resolveId: (id) => (id.endsWith(socket) ? `\0${socket}` : undefined),
    load: (id) =>
      id === `\0${socket}`
        ? "export const sendMessageWaitForResponse = undefined; throw new Error('not that runner');"
        : undefined,
  };
}
