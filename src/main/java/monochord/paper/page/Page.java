package monochord.paper.page;

import monochord.view.drawn.Picture;

/** One page, in millimetres from its upper left corner. */
public record Page(Picture picture) {}
