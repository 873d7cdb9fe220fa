package monochord.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import monochord.harmony.Bar;
import monochord.harmony.ChordEvent;
import monochord.harmony.Progression;
import monochord.harmony.voicing.Voicing;
import monochord.text.Phrase;
import monochord.view.keyboard.Drawing;
import monochord.view.keyboard.KeyboardRange;
import monochord.view.keyboard.ToneRoles;
import monochord.view.staff.MusicOnStaff;

/** The hands of a progression on paper: all of it on a grand staff, then each chord on a keyboard, all with the same keys. */
public final class VoicingHandout {
    private static final int ACROSS = 2;

    private VoicingHandout() {}

    /** @param voicings one for each chord that is struck */
    public static Handout of(Progression progression, List<Voicing> voicings) {
        List<ChordEvent> struck = progression.bars().stream()
                .map(Bar::slots)
                .flatMap(List::stream)
                .filter(slot -> !slot.held())
                .toList();
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < struck.size(); i++) {
            drawings.add(drawing(struck.get(i), voicings.get(i)));
        }
        KeyboardRange range = KeyboardRange.around(drawings);
        List<Handout.Block> blocks = new ArrayList<>();
        for (int i = 0; i < struck.size(); i++) {
            blocks.add(block(drawings.get(i), voicings.get(i), range));
        }
        Handout.Block staff = new Handout.Block(
                Phrase.NOTHING,
                List.of(),
                List.of(new Handout.HandoutFigure.Staff(MusicOnStaff.voiced(progression, voicings))));
        return new Handout(
                Phrase.of("{0} in {1}", Phrase.row(progression.symbols()), progression.key()),
                List.of(
                        Phrase.sentence(
                                "Round marks are for the right hand, square ones for the left. If a stretch hurts, leave a note out.")),
                List.of(
                        new Handout.HandoutSection(Phrase.NOTHING, 1, List.of(staff)),
                        new Handout.HandoutSection(Phrase.of("On the keyboard"), ACROSS, blocks)),
                Phrase.NOTHING);
    }

    private static Drawing drawing(ChordEvent struck, Voicing voicing) {
        return new Drawing(
                Phrase.of("{0}  {1}", struck.numeral(), struck.chord()),
                ToneRoles.marked(voicing.left(), struck.chord()),
                ToneRoles.marked(voicing.right(), struck.chord()));
    }

    private static Handout.Block block(Drawing drawing, Voicing voicing, KeyboardRange range) {
        Phrase rightHand = Phrase.of("right hand {0}", Phrase.row(voicing.right()));
        Phrase hands = voicing.left().isEmpty()
                ? rightHand
                : Phrase.of("left hand {0}, {1}", Phrase.row(voicing.left()), rightHand);
        return new Handout.Block(
                drawing.caption(),
                List.of(hands),
                List.of(new Handout.HandoutFigure.KeyboardFigure(drawing, Optional.of(range))));
    }
}
