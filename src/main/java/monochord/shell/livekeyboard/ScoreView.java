package monochord.shell.livekeyboard;

import java.util.List;
import monochord.score.Caption;
import monochord.score.Hand;
import monochord.score.Score;
import monochord.score.Sounding;
import monochord.text.Phrase;
import monochord.text.Style;
import monochord.text.StyledLine;
import monochord.text.StyledText;
import monochord.theory.Chord;
import monochord.theory.note.Beats;
import monochord.theory.note.Unreadable;
import monochord.view.Look;
import monochord.view.keyboard.MarkedKey;
import monochord.view.keyboard.MovingKeyboard;
import monochord.view.keyboard.ToneRole;

/** One score while it sounds: which keys are down at a moment, under which chord, and how that looks. */
final class ScoreView {
    private static final int TICKS_PER_BEAT = 480;

    private final List<Sounding> soundings;
    private final List<Caption> captions;
    private final MovingKeyboard keyboard;

    /**
     * What is to be seen at a moment; two moments that look alike are equal.
     *
     * @param chord the place of its caption among all, −1 before the first and where there are none
     */
    record VisibleMoment(List<Sounding> down, int chord) {}

    ScoreView(Score score) {
        soundings = score.soundings();
        captions = score.captions();
        keyboard = new MovingKeyboard(
                soundings.stream().mapToInt(ScoreView::key).min().orElse(60),
                soundings.stream().mapToInt(ScoreView::key).max().orElse(72));
    }

    private static int key(Sounding sounding) {
        return sounding.pitch().midiNumber();
    }

    /** @param beats from the beginning of the score, below 0 while it is counted in */
    VisibleMoment at(double beats) {
        long now = (long) Math.floor(beats * TICKS_PER_BEAT);
        List<Sounding> down = soundings.stream()
                .filter(sounding -> ticks(sounding.start()) <= now && now < ticks(sounding.end()))
                .toList();
        int begun = (int) captions.stream()
                .filter(caption -> ticks(caption.start()) <= now)
                .count();
        return new VisibleMoment(down, begun - 1);
    }

    private static long ticks(Beats beats) {
        return beats.ticks(TICKS_PER_BEAT);
    }

    /** Always as many lines in the same look: the chord and its place, where chords are named, and the keyboard. */
    StyledText picture(VisibleMoment moment, Look look) {
        List<MarkedKey> down = moment.down.stream()
                .map(sounding -> new MarkedKey(sounding.pitch(), role(sounding.hand())))
                .toList();
        StyledText keys = keyboard.draw(down, look.reader(), look.pictureWidth());
        return captions.isEmpty()
                ? keys
                : StyledText.of(caption(moment.chord, look)).plus(keys);
    }

    private static ToneRole role(Hand hand) {
        return switch (hand) {
            case LEFT -> ToneRole.LEFT_HAND;
            case RIGHT -> ToneRole.RIGHT_HAND;
            case EITHER, TUNE -> ToneRole.NONE;
        };
    }

    private StyledLine caption(int chord, Look look) {
        if (chord < 0) {
            return Phrase.of("to begin with: {0}", label(0)).styled(Style.QUIET).in(look.reader());
        }
        Phrase here = Phrase.of(
                "{0}  {1}",
                label(chord).styled(Style.STRONG),
                Phrase.of("{0} of {1}", chord + 1, captions.size()).styled(Style.QUIET));
        if (chord + 1 == captions.size()) {
            return here.in(look.reader());
        }
        Phrase then = Phrase.of(", then {0}", label(chord + 1)).styled(Style.QUIET);
        StyledLine next = Phrase.joined("", List.of(here, then)).in(look.reader());
        return next.columns() <= look.pictureWidth() ? next : here.in(look.reader());
    }

    private Phrase label(int chord) {
        String text = captions.get(chord).text();
        try {
            return Phrase.of("{0}", Chord.parse(text));
        } catch (Unreadable word) {
            return Phrase.typed(text);
        }
    }
}
