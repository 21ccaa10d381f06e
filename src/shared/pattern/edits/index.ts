/** Every act a designer can do to a pattern. Each is in the file of what it changes. */
export * from './blocks.ts';
export * from './borders.ts';
export * from './drawing.ts';
export * from './drawingWhole.ts';
export * from './fabrics.ts';
export * from './finishing.ts';
export * from './piecedBorders.ts';
export * from './pins.ts';
export * from './recipe.ts';
export * from './roles.ts';
export * from './sashing.ts';
export * from './setting.ts';
export * from './settingKind.ts';
export * from './sizes.ts';
export * from './takeRecipe.ts';
export * from './words.ts';
