package monochord.harmony.voicing;

/** A rule that every voicing for two hands keeps. The order is that in which a teacher would look. */
public enum VoicingRule {
    /** Each note is a tone of the chord, or its bass. */
    NO_STRANGERS,
    /** Root, third or what is suspended in its place, seventh, altered and added tones sound. */
    NOTHING_MISSING,
    /** The lowest note is the bass of the chord. */
    BASS_BELOW,
    /** The left hand stays under the right. */
    HANDS_APART,
    /** No hand plays more than five notes. */
    FIVE_FINGERS,
    /** Each hand stays within its reach. */
    WITHIN_REACH,
    /** No interval lies below its low limit. */
    CLEAR_BELOW,
    /** The leading note of the key sounds once. */
    ONE_LEADING_NOTE,
    /** The seventh sounds once. */
    ONE_SEVENTH,
    /** An altered, added or suspended tone, or the third of a dominant seventh chord, sounds once. */
    ONE_COLOUR
}
