package monochord.shell.verb.music;

import java.util.ArrayList;
import java.util.List;
import monochord.harmony.colour.Idea;
import monochord.harmony.colour.Recolour;
import monochord.shell.sitting.OpenSong;
import monochord.text.Phrase;
import monochord.view.Answer;
import monochord.view.Answers;
import monochord.view.Statement;

/** Says by which numbers what was proposed for a place of the open song can be taken. */
final class ProposedChanges {
    private static final int ELSEWHERE = 3;

    private ProposedChanges() {}

    /** The one change first, then those elsewhere, as the answer shows them. */
    static Answer besides(Answer answer, Recolour recolour, OpenSong desk) {
        List<Idea> ideas = new ArrayList<>();
        recolour.change().ifPresent(ideas::add);
        if (!ideas.isEmpty()) {
            ideas.addAll(recolour.elsewhere(ELSEWHERE));
        }
        return besides(answer, ideas, desk);
    }

    static Answer besides(Answer answer, Idea idea, OpenSong desk) {
        return besides(answer, List.of(idea), desk);
    }

    private static Answer besides(Answer answer, List<Idea> ideas, OpenSong desk) {
        if (desk.place().isEmpty() || ideas.isEmpty()) {
            return answer;
        }
        desk.propose(ideas);
        Phrase place = desk.place().get().phrase();
        Phrase first = Phrase.sentence("{0} puts the first into {1}.", Phrase.verb("change 1"), place);
        Phrase others = switch (ideas.size()) {
            case 1 -> Phrase.NOTHING;
            case 2 -> Phrase.sentence("The one below it is {0}.", Phrase.verb("change 2"));
            default ->
                Phrase.sentence(
                        "Those below it are {0} to {1}.",
                        Phrase.verb("change 2"), Phrase.verb("change " + ideas.size()));
        };
        return Answers.of(answer, Statement.of(first.then(others)));
    }
}
