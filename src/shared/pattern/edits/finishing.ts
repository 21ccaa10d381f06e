import type { Edit } from '../edit.ts';
import { lengthWithin, withFields } from './list.ts';

export const setBinding: Edit<{ readonly fabric?: string; readonly strip?: number }> = {
  id: 'set-binding',
  name: ({ strip }) =>
    strip === undefined ? 'Change the fabric of the binding' : 'Change the width of the binding strips',
  apply: (pattern, { fabric, strip }) => {
    const width = strip === undefined ? null : lengthWithin(strip, 1, 6);
    const fields = { ...(fabric === undefined ? {} : { fabric }), ...(width === null ? {} : { strip: width }) };
    return withFields(pattern, { binding: withFields(pattern.binding, fields) });
  },
};

export const setBacking: Edit<{ readonly fabric?: string; readonly beyond?: number }> = {
  id: 'set-backing',
  name: ({ beyond }) =>
    beyond === undefined ? 'Change the fabric of the backing' : 'Change how far the backing reaches',
  apply: (pattern, { fabric, beyond }) => {
    const reach = beyond === undefined ? null : lengthWithin(beyond, 0, 20);
    const fields = { ...(fabric === undefined ? {} : { fabric }), ...(reach === null ? {} : { beyond: reach }) };
    return withFields(pattern, { backing: withFields(pattern.backing, fields) });
  },
};
