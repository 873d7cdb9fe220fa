package monochord.harmony.key;

import java.util.List;
import monochord.harmony.TableText;

/**
 * How long each degree sounds in tunes of major and of minor, which degree begins and which ends them: as logarithms of
 * likelihoods, degrees as fifths from the tonic.
 *
 * <p>Text form: lines of six columns with tabs between them, {@code mode tunes fifths share first last}; lines that begin
 * with {@code #} are remarks. The share is that of the sounding time, from 0 to 1, first and last are counts of tunes.
 * Other modes than major and minor are passed over: there are too few tunes of them to compete.
 *
 * <p>What was never heard has a small likelihood all the same: 0.0006 of a tune and 0.01 are added to each share, 0.3 to
 * each count, as tried on tunes that were counted.
 */
public final class ToneProfiles {
    private static final int COLUMNS = 6;
    private static final int REACH = 16;
    private static final int PLACES = 2 * REACH + 1;
    private static final double TIME_ADDED_A_TUNE = 0.0006;
    private static final double TIME_ADDED = 0.01;
    private static final double COUNT_ADDED = 0.3;

    private final Profile major;
    private final Profile minor;
    private final double likelihoodOfMajor;
    private final double likelihoodOfMinor;

    private record ProfileRow(String mode, int tunes, int fifths, double share, int first, int last) {
        static ProfileRow of(String[] cells) {
            return new ProfileRow(
                    cells[0],
                    Integer.parseInt(cells[1]),
                    Integer.parseInt(cells[2]),
                    Double.parseDouble(cells[3]),
                    Integer.parseInt(cells[4]),
                    Integer.parseInt(cells[5]));
        }
    }

    /** One mode; the arrays go from 16 fifths below the tonic to 16 above. */
    private record Profile(int tunes, double[] time, double[] first, double[] last) {
        static Profile of(List<ProfileRow> rows) {
            if (rows.isEmpty()) {
                throw new IllegalArgumentException("a profile must have a row");
            }
            int tunes = rows.get(0).tunes();
            double[] time = new double[PLACES];
            double[] first = new double[PLACES];
            double[] last = new double[PLACES];
            for (ProfileRow row : rows) {
                time[row.fifths() + REACH] = row.share() * tunes;
                first[row.fifths() + REACH] = row.first();
                last[row.fifths() + REACH] = row.last();
            }
            return new Profile(
                    tunes,
                    logs(time, TIME_ADDED_A_TUNE * tunes + TIME_ADDED),
                    logs(first, COUNT_ADDED),
                    logs(last, COUNT_ADDED));
        }

        private static double[] logs(double[] sums, double added) {
            double all = 0;
            for (double sum : sums) {
                all += sum + added;
            }
            double[] logs = new double[sums.length];
            for (int i = 0; i < logs.length; i++) {
                logs[i] = Math.log((sums[i] + added) / all);
            }
            return logs;
        }
    }

    private ToneProfiles(Profile major, Profile minor) {
        this.major = major;
        this.minor = minor;
        double all = major.tunes() + minor.tunes();
        this.likelihoodOfMajor = Math.log(major.tunes() / all);
        this.likelihoodOfMinor = Math.log(minor.tunes() / all);
    }

    /** @throws IllegalArgumentException if a line has other columns, or major or minor has none */
    public static ToneProfiles parse(String text) {
        List<ProfileRow> rows = TableText.rows(text, COLUMNS, ProfileRow::of);
        return new ToneProfiles(profile(rows, "major"), profile(rows, "minor"));
    }

    private static Profile profile(List<ProfileRow> rows, String mode) {
        return Profile.of(rows.stream().filter(row -> row.mode().equals(mode)).toList());
    }

    private Profile of(boolean isMinor) {
        return isMinor ? minor : major;
    }

    private static int place(int fifths) {
        return Math.max(-REACH, Math.min(REACH, fifths)) + REACH;
    }

    /** How likely a moment of a tune is to sound this degree. */
    double time(boolean isMinor, int fifths) {
        return of(isMinor).time()[place(fifths)];
    }

    double first(boolean isMinor, int fifths) {
        return of(isMinor).first()[place(fifths)];
    }

    double last(boolean isMinor, int fifths) {
        return of(isMinor).last()[place(fifths)];
    }

    /** How likely a tune is to be of that mode. */
    double mode(boolean isMinor) {
        return isMinor ? likelihoodOfMinor : likelihoodOfMajor;
    }
}
