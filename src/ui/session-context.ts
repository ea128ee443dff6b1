// How the page hands its session to the panels in it.

import { createContext } from '@lit/context';
import type { Session } from '../state/session.ts';

export const sessionContext = createContext<Session>(Symbol('dropcurve session'));
