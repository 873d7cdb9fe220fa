package monochord.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import monochord.practice.mastery.Knowledge;
import monochord.practice.mastery.SkillInKey;
import monochord.practice.mastery.SkillMastery;
import monochord.practice.mastery.Tracing;
import monochord.text.Phrase;
import monochord.text.Reader;
import monochord.text.Style;
import monochord.text.StyledText;
import monochord.theory.note.Signs;

/**
 * What is known, as a field: a row for each skill in the order in which they are learned, a column for each key along the line of fifths. The more strokes a
 * sign has, the better the skill is known there; the sign says it without colour.
 *
 * @param time for which it is drawn
 */
public record ProgressPicture(Knowledge knowledge, long time, Reader reader) {
    private static final double HALF = 0.5;

    /** How well something is known, in words and as a sign of none to three strokes. */
    public enum KnownLevel {
        NOT_YET(Phrase.of("not yet"), "·", ".", Style.QUIET),
        BEGUN(Phrase.of("begun"), "-", "-", Style.PLAIN),
        COMING(Phrase.of("coming"), "=", "=", Style.NEARLY),
        KNOWN(Phrase.of("known"), "≡", "#", Style.RIGHT);

        private final Phrase words;
        private final String sign;
        private final String ascii;
        private final Style style;

        KnownLevel(Phrase words, String sign, String ascii, Style style) {
            this.words = words;
            this.sign = sign;
            this.ascii = ascii;
            this.style = style;
        }

        /** By the probability that it is known. */
        public static KnownLevel of(SkillMastery standing) {
            return of(standing.mastery());
        }

        /** By that probability, from 0 to 1. */
        public static KnownLevel of(double mastery) {
            return mastery >= Tracing.MASTERY ? KNOWN : mastery >= HALF ? COMING : BEGUN;
        }

        public String sign(Signs signs) {
            return signs.isAscii() ? ascii : sign;
        }

        Style style() {
            return style;
        }

        public Phrase words() {
            return words;
        }
    }

    private KnownField field() {
        Map<SkillInKey, KnownField.FieldSign> signs = new HashMap<>();
        knowledge
                .standings()
                .forEach((item, standing) -> signs.put(
                        item, new KnownField.FieldSign(KnownLevel.of(standing), mark(item.skill(), standing))));
        return new KnownField(signs, List.of(Phrase.of("* due"), Phrase.of("~ slower than in other keys")), reader);
    }

    /** Columns of a terminal that the field needs. */
    public int columns() {
        return field().columns();
    }

    /** The field: major keys, then minor ones if any were asked, then what the signs mean. */
    public StyledText text() {
        return field().text();
    }

    private String mark(String skill, SkillMastery standing) {
        return standing.isDue(time) ? "*" : standing.isSlow(knowledge.pace(skill)) ? "~" : "";
    }
}
