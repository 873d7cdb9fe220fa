package monochord.shell.replay;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.record.Bookmarks;
import monochord.record.KeptSet;
import monochord.shell.storage.Keeper;
import monochord.text.Phrase;

/** A keeper with an agenda of its own. */
record LeftOff(Keeper keeper, Agenda agenda) implements Keeper {
    @Override
    public void ready() {
        keeper.ready();
    }

    @Override
    public void keep(Attempt attempt) {
        keeper.keep(attempt);
    }

    @Override
    public Knowledge knowledge() {
        return keeper.knowledge();
    }

    @Override
    public List<Phrase> notices() {
        return keeper.notices();
    }

    @Override
    public Optional<Path> classFolder() {
        return keeper.classFolder();
    }

    @Override
    public Bookmarks bookmarks() {
        return keeper.bookmarks();
    }

    @Override
    public void keep(Bookmarks bookmarks) {
        keeper.keep(bookmarks);
    }

    @Override
    public KeptSet set() {
        return keeper.set();
    }

    @Override
    public void keep(KeptSet set) {
        keeper.keep(set);
    }

    @Override
    public void leave(Agenda left) {
        keeper.leave(left);
    }
}
