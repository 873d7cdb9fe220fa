/**
 * What the line can stand in, what Enter does there, and answers longer than the window. May import all rooms, and nothing
 * of {@code shell} but what it sits on.
 */
package monochord.shell.line;
