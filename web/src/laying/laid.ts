/** Fetched when a skirt is laid as it was found: what is seen first does without it. */
export { planLaid } from '@ribbonwright/engine';
