package monochord.shell.verb.song;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import monochord.shell.sitting.Sitting;
import monochord.text.Phrase;
import monochord.theory.Key;
import monochord.theory.note.NoteName;
import monochord.theory.note.Unreadable;
import monochord.view.Answer;
import monochord.view.Statement;

/**
 * The keys in which a band plays, in its own order: where a place stands in one, it is rehearsed in the next. Kept in the
 * settings by their tonics; a song in minor is taken in the minor keys on them.
 */
final class BandKeys {
    private static final String SETTING = "band.keys";
    /** Common practice of singers, guitars and horns together, no source. */
    private static final String USUAL = "C G F D Bb Eb A";

    private static final int MOST = 12;

    private BandKeys() {}

    /** From this key on: it first, then the list without it. */
    static List<Key> from(Key key, Sitting sitting) {
        List<Key> keys = new ArrayList<>(List.of(key));
        tonics(sitting).stream()
                .map(tonic -> new Key(tonic, key.mode()))
                .filter(other -> !other.equals(key))
                .forEach(keys::add);
        return keys;
    }

    private static List<NoteName> tonics(Sitting sitting) {
        try {
            return parse(sitting.settings().get(SETTING).orElse(USUAL));
        } catch (Unreadable spoilt) {
            return parse(USUAL);
        }
    }

    private static List<NoteName> parse(String text) {
        List<NoteName> tonics = Arrays.stream(text.strip().split("[\\s,]+"))
                .map(NoteName::parse)
                .distinct()
                .toList();
        if (tonics.size() > MOST) {
            throw Unreadable.because(text, 0, "a list of keys", "twelve keys are enough", "rehearse keys F Bb Eb");
        }
        return tonics;
    }

    /** Says the list, or settles another. */
    static Answer said(String text, Sitting sitting) {
        if (text.isBlank()) {
            return Statement.of(list(tonics(sitting)));
        }
        List<NoteName> tonics = parse(text);
        boolean kept = sitting.settings().keep(SETTING, text.strip());
        return Statement.of(
                list(tonics), kept ? Phrase.NOTHING : Phrase.sentence("It cannot be kept for the next sitting."));
    }

    private static Phrase list(List<NoteName> tonics) {
        return Phrase.sentence(
                "The band plays in {0}; what stands in one key is rehearsed in the next.", Phrase.list(tonics));
    }
}
