package monochord.view.staff;

/**
 * A column in its line.
 *
 * @param x where its heads begin
 * @param bar the place of its bar in the line, so that beams of two bars are told apart
 */
record PlacedColumn(SetColumn column, double x, int bar) {}
