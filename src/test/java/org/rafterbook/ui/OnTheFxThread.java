package org.rafterbook.ui;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import org.junit.jupiter.api.extension.DynamicTestInvocationContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;

/** Brings each test, set-up and tear-down method to the JavaFX thread and its failure back. */
final class OnTheFxThread implements InvocationInterceptor {

    @Override
    public <T> T interceptTestClassConstructor(
            Invocation<T> invocation, ReflectiveInvocationContext<Constructor<T>> context, ExtensionContext extension) {
        return Fx.on(invocation::proceed);
    }

    @Override
    public void interceptBeforeEachMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> context, ExtensionContext extension) {
        Fx.on(invocation::proceed);
    }

    @Override
    public void interceptTestMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> context, ExtensionContext extension) {
        Fx.on(invocation::proceed);
    }

    @Override
    public void interceptTestTemplateMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> context, ExtensionContext extension) {
        Fx.on(invocation::proceed);
    }

    @Override
    public void interceptDynamicTest(
            Invocation<Void> invocation, DynamicTestInvocationContext context, ExtensionContext extension) {
        Fx.on(invocation::proceed);
    }

    @Override
    public void interceptAfterEachMethod(
            Invocation<Void> invocation, ReflectiveInvocationContext<Method> context, ExtensionContext extension) {
        Fx.on(invocation::proceed);
    }
}
