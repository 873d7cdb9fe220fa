package monochord.sound;

import java.util.List;
import monochord.text.Phrase;

/**
 * The caution for ears. A program cannot know how loud it is at the ear, so it says this, and keeps all that it
 * plays at one level ({@link monochord.sound.level.LoudnessTarget}).
 *
 * <p>Source: WHO-ITU H.870, Safe listening devices and systems, 2019 (80 dB(A) for 40 hours a week, 75 for children and
 * the sensitive); NIOSH Workplace Solutions, Reducing the risk of hearing disorders among musicians, 2015 (85 dB(A) for
 * 8 hours a day).
 */
public final class HearingCaution {
    /** One line, for the first sound of a sitting. */
    public static final Phrase BRIEF = Phrase.sentence("Start with the volume low, most of all in headphones.");

    /** The whole caution, a sentence or two to a line. */
    public static final List<Phrase> EARS = List.of(
            Phrase.of("Start with the volume low, most of all in headphones, and turn it up only until you hear every"
                    + " voice."),
            Phrase.of("For listening, 80 dB(A) for 40 hours a week is held to be safe for adults, 75 dB(A) for children"
                    + " (WHO-ITU H.870). Each 3 dB more halves the time."),
            Phrase.of("At work, 85 dB(A) for 8 hours a day is the recommended limit (NIOSH, 2015)."),
            Phrase.of("If your ears ring or sounds seem dull afterwards, stop, rest them, and play more quietly next"
                    + " time; if it stays, see a doctor."));

    private HearingCaution() {}
}
