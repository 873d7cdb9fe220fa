/**
 * Keyboards in letters: one chord, a progression, two hands, keys that go down; and the same in words.
 *
 * <p>Imports {@code text} and the rooms whose values it draws.
 */
package monochord.view.keyboard;
