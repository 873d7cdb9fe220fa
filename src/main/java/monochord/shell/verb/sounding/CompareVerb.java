package monochord.shell.verb.sounding;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import monochord.shell.sentence.Sentence;
import monochord.shell.sentence.Usage;
import monochord.shell.sentence.Verb;
import monochord.shell.sitting.Contest;
import monochord.shell.sitting.Sitting;
import monochord.shell.sitting.Stage;
import monochord.shell.sitting.Take;
import monochord.sound.Directions;
import monochord.theory.Unreadable;
import monochord.view.Answer;

/** Lets two versions be heard one after the other, and says what differs. */
final class CompareVerb implements Verb {
    private static final String EXAMPLE = "compare F C G Ab vs F C Gsus4 Abmaj7 in C";
    private static final String WHAT = "a comparison";

    @Override
    public Usage usage() {
        return Usage.of(
                        "compare",
                        Usage.Topic.SOUND,
                        "compare MUSIC vs MUSIC [over CHORDS] [in KEY] " + Wishes.FORM + " " + Recording.FORM
                                + ", or compare this, first or second",
                        "hear two versions, equally loud, and what differs; this means the last, plain and improved",
                        EXAMPLE,
                        "compare IV I V I vs IV I bVI I in D as broken at 72",
                        "compare E4:2 D4 vs E4:2 Eb4 over C G in C",
                        "compare C vs Cm7")
                .withSmallWords(Wishes.and("in", "vs", "versus", PlayVerb.OVER))
                .withOptions(Recording.WAV, Recording.MIDI);
    }

    @Override
    public boolean isNoName(String text, int place) {
        return Wishes.sayHow(text, place);
    }

    @Override
    public Answer run(Sentence sentence, Sitting sitting) {
        Optional<Sentence.Part> other = sentence.clause("vs").or(() -> sentence.clause("versus"));
        if (other.isPresent()) {
            List<Take> takes = takes(sentence, other.get(), sitting);
            return heard(sentence, contest(sentence, takes, sitting.stage().directions()), sitting);
        }
        return switch (sentence.body().text().toLowerCase(Locale.ROOT)) {
            case "this" -> versions(sentence, sitting);
            case "" -> heard(sentence, again(sentence, sitting), sitting);
            case "first", "a" -> heard(sentence, again(sentence, sitting), 0, sitting);
            case "second", "b" -> heard(sentence, again(sentence, sitting), 1, sitting);
            default -> throw refused(sentence, "expected vs and what to compare with");
        };
    }

    private static Unreadable refused(Sentence sentence, String why) {
        return Unreadable.because(sentence.whole(), sentence.whole().length(), WHAT, why, EXAMPLE);
    }

    private static List<Take> takes(Sentence sentence, Sentence.Part other, Sitting sitting) {
        if (sentence.clause("vs").isPresent() && sentence.clause("versus").isPresent()) {
            throw refused(sentence, "two versions are compared at a time");
        }
        return Stream.of(sentence.body(), other)
                .map(part -> PlayVerb.take(part, sentence, sitting))
                .toList();
    }

    private static Contest contest(Sentence sentence, List<Take> takes, Directions usual) {
        Directions directions = Wishes.of(sentence, usual);
        takes.forEach(take -> Wishes.within(sentence.whole(), take.piece(), directions));
        return new Contest(takes, directions);
    }

    private static Answer versions(Sentence sentence, Sitting sitting) {
        Stage stage = sitting.stage();
        if (stage.versions().isEmpty() && stage.contest().isPresent()) {
            return heard(sentence, again(sentence, sitting), sitting);
        } else if (stage.versions().isEmpty()) {
            throw refused(sentence, "there are no two versions of this; voice, recolour and fit leave them");
        }
        return heard(sentence, contest(sentence, stage.versions(), stage.directions()), sitting);
    }

    private static Contest again(Sentence sentence, Sitting sitting) {
        Contest last = sitting.stage().contest().orElseThrow(() -> refused(sentence, "nothing has been compared yet"));
        Directions directions = Wishes.of(sentence, sitting.stage().lastDirections());
        return directions.equals(last.directions()) ? last : contest(sentence, last.takes(), directions);
    }

    private static Answer heard(Sentence sentence, Contest contest, Sitting sitting) {
        return Recording.written(sentence, contest::performance, sitting).orElseGet(() -> contest.heard(sitting));
    }

    private static Answer heard(Sentence sentence, Contest contest, int side, Sitting sitting) {
        return Recording.written(sentence, () -> contest.performance(side), sitting)
                .orElseGet(() -> contest.heard(side, sitting));
    }

    @Override
    public List<String> candidates(Sitting sitting) {
        return List.of("this", "first", "second");
    }
}
