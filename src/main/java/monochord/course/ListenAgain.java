package monochord.course;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import monochord.practice.Excerpt;
import monochord.practice.Excerpt.Moment;
import monochord.practice.Question;
import monochord.text.Phrase;
import monochord.theory.note.Pitch;

/**
 * What is said to a first wrong answer by ear: where to listen, and in which direction the answer is off, but not what it
 * was. It is worked out from what sounded and what the answer would have sounded like.
 */
final class ListenAgain {
    private static final Phrase PLAIN = Phrase.sentence("Not that one.");

    private ListenAgain() {}

    /** @param sounds whether it is played once more */
    static Phrase to(Question question, String answer, boolean sounds) {
        Phrase off = off(question, answer);
        if (!sounds) {
            return off;
        }
        return isRow(question.heard().map(Excerpt::body).orElse(List.of()))
                ? off.then(Phrase.sentence("Listen again, from the bass up."))
                : off.then(Phrase.sentence("Listen again."));
    }

    private static Phrase off(Question question, String answer) {
        Optional<Excerpt> asked = question.heard();
        Optional<Excerpt> both = question.heardBeside(answer);
        if (asked.isEmpty() || both.isEmpty()) {
            return PLAIN;
        }
        List<Moment> sounded = asked.get().body();
        List<Moment> all = both.get().body();
        return between(all.subList(0, Math.max(0, all.size() - sounded.size() - 1)), sounded);
    }

    private static Phrase between(List<Moment> given, List<Moment> sounded) {
        if (isInterval(given) && isInterval(sounded)) {
            int wider = span(sounded) - span(given);
            return wider == 0
                    ? PLAIN
                    : wider > 0
                            ? Phrase.sentence("It is wider than that.")
                            : Phrase.sentence("It is narrower than that.");
        }
        if (isRow(sounded)) {
            int first = firstDifference(given, sounded);
            return first < 0 ? PLAIN : place(first, sounded);
        }
        return given.isEmpty() ? PLAIN : chord(given.get(given.size() - 1), sounded.get(sounded.size() - 1));
    }

    private static boolean isInterval(List<Moment> moments) {
        return pitches(moments).size() == 2;
    }

    private static List<Pitch> pitches(List<Moment> moments) {
        return moments.stream()
                .flatMap(moment -> moment.pitches().stream())
                .sorted()
                .toList();
    }

    private static int span(List<Moment> moments) {
        List<Pitch> both = pitches(moments);
        return both.get(1).midiNumber() - both.get(0).midiNumber();
    }

    /** Whether chords follow one another, no single chord note by note. */
    private static boolean isRow(List<Moment> moments) {
        return moments.stream().filter(moment -> moment.pitches().size() > 2).count() > 1;
    }

    private static int firstDifference(List<Moment> given, List<Moment> sounded) {
        for (int i = 0; i < Math.min(given.size(), sounded.size()); i++) {
            if (!isAlike(given.get(i).pitches(), sounded.get(i).pitches())) {
                return i;
            }
        }
        return given.size() == sounded.size() ? -1 : Math.min(given.size(), sounded.size()) - 1;
    }

    /** The same notes over the same bass, in whatever octaves they lie. */
    private static boolean isAlike(List<Pitch> one, List<Pitch> other) {
        return one.stream()
                        .map(Pitch::name)
                        .collect(Collectors.toSet())
                        .equals(other.stream().map(Pitch::name).collect(Collectors.toSet()))
                && one.stream()
                        .findFirst()
                        .map(Pitch::name)
                        .equals(other.stream().findFirst().map(Pitch::name));
    }

    private static Phrase place(int first, List<Moment> sounded) {
        long chord = sounded.subList(0, first + 1).stream()
                .filter(moment -> moment.pitches().size() > 2)
                .count();
        return chord < 2
                ? Phrase.sentence("The first chord is another one already.")
                : Phrase.sentence("Chord {0} is the first that is another one.", (int) chord);
    }

    private static Phrase chord(Moment given, Moment sounded) {
        List<Pitch> yours = given.pitches();
        List<Pitch> its = sounded.pitches();
        if (yours.size() != its.size()) {
            return its.size() > yours.size()
                    ? Phrase.sentence("There is more in it than in yours.")
                    : Phrase.sentence("There is less in it than in yours.");
        }
        if (yours.equals(its)) {
            return PLAIN;
        }
        int at = 0;
        while (yours.get(at).equals(its.get(at))) {
            at++;
        }
        boolean higher = its.get(at).midiNumber() > yours.get(at).midiNumber();
        return higher
                ? Phrase.sentence("Counted from the bottom, its note {0} lies higher than yours.", at + 1)
                : Phrase.sentence("Counted from the bottom, its note {0} lies lower than yours.", at + 1);
    }
}
