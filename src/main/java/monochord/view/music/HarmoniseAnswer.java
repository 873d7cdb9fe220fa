package monochord.view.music;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.tune.Harmonisation;
import monochord.harmony.tune.Harmonisation.HarmonisedSlot;
import monochord.harmony.tune.Harmonisation.Offer;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.Numeral;
import monochord.theory.note.Beats;
import monochord.view.Answer;
import monochord.view.Json;
import monochord.view.Look;
import monochord.view.Table;
import monochord.view.Table.Column;

/**
 * Plain chords under a tune, and at each change what else would do.
 *
 * @param remarks what is to be known about how the tune was read and its key found
 */
public record HarmoniseAnswer(Harmonisation harmonisation, List<Phrase> remarks) implements Answer {
    private static final int PLACE = 8;
    private static final int CHORD = 8;
    private static final int OTHERS = 10;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        text.line(Phrase.of("In {0}", harmonisation.key()), Style.HEADING);
        text.line(Phrase.row(harmonisation.progression().symbols()), Style.STRONG);
        StyledText.Builder end = StyledText.builder(look.reader());
        end.line(
                Phrase.sentence(
                        "Many chords are right under a tune: these are the plain ones, for your ear to decide. Agree them with the band."),
                Style.QUIET);
        return text.build()
                .wrapped(look.width())
                .plus(table().text(look))
                .plus(end.build().wrapped(look.width()));
    }

    private Table table() {
        Table table = Table.of(
                Column.left(Phrase.of("bar")).atLeast(PLACE),
                Column.left(Phrase.of("chord")).atLeast(CHORD),
                Column.left().atLeast(CHORD),
                Column.left(Phrase.of("or")).atLeast(OTHERS),
                Column.left(Phrase.of("why")));
        Chord before = null;
        for (HarmonisedSlot slot : harmonisation.slots()) {
            Chord chord = slot.offer().chord();
            if (!chord.equals(before)) {
                table.row(row(slot));
            }
            before = chord;
        }
        return table;
    }

    private List<Phrase> row(HarmonisedSlot slot) {
        return List.of(
                place(slot.start()),
                Phrase.of("{0}", slot.offer().chord()).styled(Style.STRONG),
                Phrase.of("{0}", Numeral.of(slot.offer().chord(), harmonisation.key())),
                Phrase.joined(", ", slot.others().stream().map(Offer::chord).toList()),
                joined(slot.offer().why()));
    }

    /** Sentences one after the other. */
    private static Phrase joined(List<Phrase> sentences) {
        return sentences.stream().reduce(Phrase.NOTHING, Phrase::then);
    }

    /** The bar and the beat in it, from 1; the pick-up by its name. */
    private Phrase place(double start) {
        if (start < 0) {
            return Phrase.of("pick-up");
        }
        Beats bar = harmonisation.metre().bar();
        double beats = (double) bar.numerator() / bar.denominator();
        int number = (int) Math.floor(start / beats + 1e-9);
        double within = start - number * beats;
        return within < 1e-9
                ? Phrase.of("{0}", number + 1)
                : Phrase.of("{0}, beat {1}", number + 1, Phrase.typed(beat(within + 1)));
    }

    private static String beat(double beat) {
        return beat == Math.rint(beat) ? Integer.toString((int) beat) : Double.toString(beat);
    }

    @Override
    public void json(Json json) {
        json.put("kind", "harmonise")
                .put("key", harmonisation.key().toString())
                .objects("slots", harmonisation.slots(), this::json)
                .put("remarks", remarks);
    }

    private void json(Json object, HarmonisedSlot slot) {
        List<Phrase> why = new ArrayList<>(slot.offer().why());
        object.put("beat", slot.start())
                .put("beats", (double) slot.beats().numerator() / slot.beats().denominator())
                .put("symbol", slot.offer().chord().toString())
                .put(
                        "numeral",
                        Numeral.of(slot.offer().chord(), harmonisation.key()).toString())
                .put("others", slot.others().stream().map(Offer::chord).toList())
                .put("why", why)
                .put(
                        "othersWhy",
                        slot.others().stream().map(offer -> joined(offer.why())).toList());
    }
}
