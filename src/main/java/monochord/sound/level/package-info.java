/**
 * How loud sound is and how loud it may be: measured as broadcasters do, brought to a level, kept from clipping. Frames are
 * stereo, each sample a float of which 1 is full scale. May import the JDK alone.
 */
package monochord.sound.level;
