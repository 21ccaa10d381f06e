import { createContext } from 'react';
import type { Print } from './prints.ts';

/** The photographs with which figures show the fabrics of the open pattern; none where figures are of something else. */
export const PrintsContext = createContext<readonly Print[]>([]);
