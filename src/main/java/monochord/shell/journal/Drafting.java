package monochord.shell.journal;

import java.util.Optional;
import java.util.function.Supplier;
import monochord.text.Phrase;

/** What keeps one sitting's draft up to date. */
public interface Drafting {
    /** Whether there is any draft to keep; if not, nothing need be rendered for one. */
    boolean isKept();

    /**
     * Puts what is new behind the draft, safely on disk before this returns; a draft that has not begun takes all.
     *
     * @return why it cannot be kept, once
     */
    Optional<Phrase> append(Supplier<String> all, Supplier<String> behind);

    /** The sitting is left: nothing of the draft is worth keeping if all was saved, else it stays behind. */
    void leave(boolean saved);

    /** For another notebook in the same sitting. */
    Drafting another(boolean isForeign);

    /** None, for pipes and scripts. */
    static Drafting none() {
        return new Drafting() {
            @Override
            public boolean isKept() {
                return false;
            }

            @Override
            public Optional<Phrase> append(Supplier<String> all, Supplier<String> behind) {
                return Optional.empty();
            }

            @Override
            public void leave(boolean saved) {
                // nothing was begun
            }

            @Override
            public Drafting another(boolean isForeign) {
                return this;
            }
        };
    }
}
