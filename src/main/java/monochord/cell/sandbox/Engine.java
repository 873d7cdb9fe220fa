package monochord.cell.sandbox;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import jdk.jshell.execution.LocalExecutionControl;
import monochord.cell.protocol.EncodedValue;

/**
 * Runs snippets in this JVM and keeps what came out as a {@link EncodedValue}. The value is put into words on the snippet's own
 * thread, so that one that never ends saying what it is can be stopped like any other.
 */
public final class Engine extends LocalExecutionControl {
    private static final Method EVALUATE = evaluate("evaluate");

    private static Method snippet;
    private static volatile Thread runner;
    private static volatile EncodedValue told;

    private static Method evaluate(String name) {
        try {
            return Engine.class.getMethod(name);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(name + " is right below", impossible);
        }
    }

    /** The last value, or null where a snippet was stopped before it had one. */
    EncodedValue told() {
        return told;
    }

    @Override
    protected String invoke(Method doIt) throws Exception {
        snippet = doIt;
        told = null;
        try {
            return super.invoke(EVALUATE);
        } finally {
            runner = null;
        }
    }

    /**
     * Runs the snippet that is due; called by {@link #invoke} on a thread of the snippet's own.
     *
     * @throws Throwable what the snippet throws
     */
    public static String evaluate() throws Throwable {
        runner = Thread.currentThread();
        try {
            told = ValueText.of(snippet.invoke(null));
        } catch (InvocationTargetException thrown) {
            throw thrown.getCause();
        }
        return "";
    }

    @Override
    public String varValue(String className, String varName)
            throws RunException, EngineTerminationException, InternalException {
        try {
            Field variable = findClass(className).getDeclaredField(varName);
            variable.setAccessible(true);
            return ValueText.asTyped(variable.get(null));
        } catch (ReflectiveOperationException unreachable) {
            throw new InternalException(unreachable.toString());
        }
    }

    /** Also wakes a snippet that sleeps or waits. */
    @Override
    public void stop() throws EngineTerminationException, InternalException {
        super.stop();
        Thread asleep = runner;
        if (asleep != null) {
            asleep.interrupt();
        }
    }
}
