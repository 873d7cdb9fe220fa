package monochord.shell;

/**
 * Where the program starts. By itself it knows nothing but the JDK, so that it can still speak where a library or another
 * class of ours is missing or damaged: then one line says what to do.
 */
public final class Main implements Thread.UncaughtExceptionHandler {
    /** The exit status where something outside failed, as in {@code Answer}. */
    private static final int FAILED = 3;

    private Main() {}

    /**
     * Opens the prompt, or runs one verb.
     *
     * @param arguments the verb and its sentence, or nothing for the prompt
     */
    public static void main(String[] arguments) {
        Thread.setDefaultUncaughtExceptionHandler(new Main());
        try {
            Program.run(arguments);
        } catch (LinkageError | InternalError damage) {
            System.err.println("monochord: " + toldAs(damage));
            System.exit(FAILED);
        }
    }

    /** What to do where the program is damaged, in one line. The JVM finds a cut archive in its memory by InternalError. */
    static String toldAs(Error damage) {
        Object what = damage.getMessage() == null ? damage.getCause() : damage.getMessage();
        return "A part of the program is missing or damaged ("
                + String.valueOf(what).lines().findFirst().orElse("")
                + (Boolean.getBoolean("monochord.image")
                        ? "). Install it anew; what you have done so far stays."
                        : "). Remove the folder target beside the launcher and start again: it is built anew.");
    }

    /** The same from any other thread; what else goes wrong there is told as the JDK tells it. */
    @Override
    public void uncaughtException(Thread thread, Throwable fault) {
        if (fault instanceof LinkageError || fault instanceof InternalError) {
            System.err.println("monochord: " + toldAs((Error) fault));
        } else {
            System.err.print("Exception in thread \"" + thread.getName() + "\" ");
            fault.printStackTrace();
        }
    }
}
