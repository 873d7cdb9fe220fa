package monochord.paper;

import java.util.List;
import monochord.harmony.Borrowing;
import monochord.harmony.ChordOrigin;
import monochord.text.Phrase;
import monochord.theory.Chord;
import monochord.theory.Key;
import monochord.theory.Numeral;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.ToneRoles;
import monochord.view.staff.MusicOnStaff;

/** The chords of a key on paper: its own triads and seventh chords, and the triads that are borrowed, with their sources. */
public final class ChordHandout {
    private static final int TRIAD = 3;
    private static final int SEVENTH = 4;
    private static final int ACROSS = 3;

    private ChordHandout() {}

    public static Handout of(Key key) {
        List<Chord> borrowed = Borrowing.table(key).stream()
                .map(Borrowing.Borrowed::chord)
                .filter(chord -> chord.tones().size() == TRIAD)
                .toList();
        return new Handout(
                Phrase.of("Chords in {0}", key),
                List.of(Phrase.sentence(
                        "Notes of {0}: {1}.", key, Phrase.row(key.scale().tones()))),
                List.of(
                        section(Phrase.of("Triads of the key"), Borrowing.stacked(key.scale(), TRIAD), key),
                        section(Phrase.of("Seventh chords of the key"), Borrowing.stacked(key.scale(), SEVENTH), key),
                        section(Phrase.of("Borrowed triads"), borrowed, key)),
                Phrase.NOTHING);
    }

    private static Handout.HandoutSection section(Phrase heading, List<Chord> chords, Key key) {
        return new Handout.HandoutSection(
                heading, ACROSS, chords.stream().map(chord -> block(chord, key)).toList());
    }

    private static Handout.Block block(Chord chord, Key key) {
        Numeral numeral = Numeral.onDegree(chord, key);
        Phrase name = Phrase.of("{0}  {1}", numeral, chord);
        return new Handout.Block(
                name,
                lines(chord, numeral, key),
                List.of(
                        Handout.HandoutFigure.KeyboardFigure.of(Drawing.of(name, ToneRoles.close(chord))),
                        new Handout.HandoutFigure.Staff(MusicOnStaff.chord(chord, numeral, key))));
    }

    /** Where it comes from is said only where the heading does not say it. */
    private static List<Phrase> lines(Chord chord, Numeral numeral, Key key) {
        Phrase notes = Phrase.of("Notes: {0}", Phrase.row(chord.tones()));
        boolean own = chord.tones().stream().allMatch(key.scale().tones()::contains);
        return own ? List.of(notes) : List.of(notes, Phrase.sentence("{0}.", ChordOrigin.of(chord, numeral, key)));
    }
}
