package floorcalc;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/** {@code -Dfloorcalc.tries=20} tries twenty times as many cases; {@link SameCases} says which. */
public final class MoreTries implements AroundPropertyHook {
  @Override
  public PropagationMode propagateTo() {
    return PropagationMode.ALL_DESCENDANTS;
  }

  @Override
  public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
    PropertyAttributes attributes = context.attributes();
    double times = Double.parseDouble(System.getProperty("floorcalc.tries", "1"));
    attributes.tries().ifPresent(tries -> attributes.setTries((int) Math.max(1, tries * times)));
    attributes.setEdgeCases(EdgeCasesMode.NONE); // they would take most of the tries; the numbers themselves reach their bounds often
    return property.execute();
  }
}
