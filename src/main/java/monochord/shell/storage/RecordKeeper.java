package monochord.shell.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import monochord.practice.mastery.Attempt;
import monochord.practice.mastery.Knowledge;
import monochord.record.Agenda;
import monochord.record.Bookmarks;
import monochord.record.KeptSet;
import monochord.record.Register;
import monochord.text.Phrase;

/** Keeps answers in the record on disk, of which nothing is loaded before the first question. */
public final class RecordKeeper implements Keeper {
    private final Path home;
    private Register register;
    private boolean opening;

    /** @param home the folder for the learner's own things */
    public RecordKeeper(Path home) {
        this.home = home;
    }

    private synchronized Register register() {
        if (register == null) {
            register = new Register(home);
        }
        return register;
    }

    @Override
    public void ready() {
        if (!opening) {
            opening = true;
            register().openBehind();
        }
    }

    @Override
    public void keep(Attempt attempt) {
        register().keep(attempt);
    }

    @Override
    public Knowledge knowledge() {
        return register().knowledge();
    }

    @Override
    public List<Phrase> notices() {
        return register == null ? List.of() : register.notice();
    }

    @Override
    public Agenda agenda() {
        return Agenda.read(home);
    }

    @Override
    public Bookmarks bookmarks() {
        return Bookmarks.read(home);
    }

    @Override
    public void keep(Bookmarks bookmarks) {
        bookmarks.write(home);
    }

    @Override
    public KeptSet set() {
        return KeptSet.read(home);
    }

    @Override
    public void keep(KeptSet set) {
        set.write(home);
    }

    @Override
    public Optional<Path> place() {
        return Optional.of(home);
    }

    @Override
    public int copy(Path into) throws IOException {
        return register().copy(into);
    }

    @Override
    public int bringBack(Path from) throws IOException {
        return register().bringBack(from);
    }

    @Override
    public void leave(Agenda agenda) {
        agenda.write(home);
        register().close();
    }
}
