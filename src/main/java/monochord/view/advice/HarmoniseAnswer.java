package monochord.view.advice;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.tune.Harmonisation;
import monochord.harmony.tune.Harmonisation.HarmonisedSlot;
import monochord.harmony.tune.Harmonisation.Offer;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledText;
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
    private static final double ALMOST = 1e-9;

    @Override
    public StyledText text(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        remarks.forEach(remark -> text.line(remark, Style.QUIET));
        text.line(Phrase.of("In {0}", harmonisation.key()), Style.HEADING);
        text.line(Phrase.row(harmonisation.progression().symbols()), Style.STRONG);
        StyledText.Builder end = StyledText.builder(look.reader());
        end.line(
                Phrase.sentence(
                        "{0} lets you hear it; {1} finds where such chords could take a colour.",
                        Phrase.verb("play"), Phrase.verb("recolour")),
                Style.QUIET);
        end.line(
                Phrase.sentence(
                        "Many chords are right under a tune: these are the plain ones, for your ear to decide. Agree them with the band."),
                Style.QUIET);
        return text.build()
                .wrapped(look.width())
                .plus(look.plain() ? sentences(look) : table().text(look))
                .plus(end.build().wrapped(look.width()));
    }

    private Table table() {
        Table table = Table.of(
                Column.left(Phrase.of("bar")).atLeast(PLACE),
                Column.left(Phrase.of("chord")).atLeast(CHORD),
                Column.left().atLeast(CHORD),
                Column.left(Phrase.of("or")).atLeast(OTHERS),
                Column.left(Phrase.of("why")));
        for (LastingChord change : changes()) {
            table.row(
                    place(change.first().start()),
                    Phrase.of("{0}", change.first().offer().chord()).styled(Style.STRONG),
                    Phrase.of("{0}", numeral(change.first())),
                    others(change.first()),
                    change.why());
        }
        return table;
    }

    private StyledText sentences(Look look) {
        StyledText.Builder text = StyledText.builder(look.reader());
        for (LastingChord change : changes()) {
            HarmonisedSlot slot = change.first();
            text.line(Phrase.of(
                            "{0}: {1}, {2}, or {3}.",
                            slot.start() < 0 ? place(slot.start()) : Phrase.of("bar {0}", place(slot.start())),
                            slot.offer().chord(),
                            numeral(slot),
                            others(slot))
                    .then(change.why()));
        }
        return text.build().wrapped(look.width());
    }

    /** One chord as long as it lasts. */
    private record LastingChord(HarmonisedSlot first, HarmonisedSlot last) {
        /** What it does to the notes with which it comes, and how it goes on. */
        Phrase why() {
            Phrase notes = joined(first.offer().notes());
            return last.offer().course().map(notes::then).orElse(notes);
        }
    }

    private List<LastingChord> changes() {
        List<LastingChord> changes = new ArrayList<>();
        for (HarmonisedSlot slot : harmonisation.slots()) {
            int last = changes.size() - 1;
            boolean goesOn = last >= 0
                    && changes.get(last)
                            .last()
                            .offer()
                            .chord()
                            .equals(slot.offer().chord());
            if (goesOn) {
                changes.set(last, new LastingChord(changes.get(last).first(), slot));
            } else {
                changes.add(new LastingChord(slot, slot));
            }
        }
        return changes;
    }

    private Numeral numeral(HarmonisedSlot slot) {
        return Numeral.of(slot.offer().chord(), harmonisation.key());
    }

    private static Phrase others(HarmonisedSlot slot) {
        return Phrase.joined(", ", slot.others().stream().map(Offer::chord).toList());
    }

    /** Sentences one after the other. */
    private static Phrase joined(List<Phrase> sentences) {
        return sentences.stream().reduce(Phrase.NOTHING, Phrase::then);
    }

    /** The bar and the beat in it, from 1, where a dotted quarter is a beat if chords may come with it; or the pick-up. */
    private Phrase place(double start) {
        if (start < 0) {
            return Phrase.of("pick-up");
        }
        double bar = number(harmonisation.metre().bar());
        int bars = (int) Math.floor(start / bar + ALMOST);
        Beats slot = harmonisation.metre().slot();
        double beat = slot.denominator() == 1 ? 1 : number(slot);
        int beats = (int) Math.round((start - bars * bar) / beat);
        return beats == 0 ? Phrase.of("{0}", bars + 1) : Phrase.of("{0}, beat {1}", bars + 1, beats + 1);
    }

    private static double number(Beats beats) {
        return (double) beats.numerator() / beats.denominator();
    }

    @Override
    public void json(Json json) {
        json.put("kind", "harmonise")
                .put("key", harmonisation.key().toString())
                .objects("slots", harmonisation.slots(), this::json)
                .put("remarks", remarks);
    }

    private void json(Json object, HarmonisedSlot slot) {
        object.put("beat", slot.start())
                .put("beats", number(slot.beats()))
                .put("symbol", slot.offer().chord().toString())
                .put("numeral", numeral(slot).toString())
                .put("others", slot.others().stream().map(Offer::chord).toList())
                .put("why", slot.offer().why())
                .put(
                        "othersWhy",
                        slot.others().stream().map(offer -> joined(offer.why())).toList());
    }
}
