/** What the settings below `daystave.preview` are where nobody has set them. The client reads them, and no server. */
export const SCROLL_SETTINGS = { scrollWithEditor: true, scrollEditor: false };
