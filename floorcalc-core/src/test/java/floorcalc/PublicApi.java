package floorcalc;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What callers of the core can name, read from its compiled classes: each type with its public supertypes, each
 * constructor, method, field, constant and record component, a line each.
 */
final class PublicApi {

  /** Every class has these, whether it writes them or not. */
  private static final Set<String> OF_EVERY_OBJECT = Set.of("equals(java.lang.Object)", "hashCode()", "toString()");

  private PublicApi() {
  }

  /** Every public type of the core, sorted by name. */
  static List<Class<?>> types() {
    Path root = root();
    try (Stream<Path> files = Files.walk(root)) {
      return files.map(file -> root.relativize(file).toString().replace('\\', '/'))
          .filter(name -> name.startsWith("floorcalc/") && name.endsWith(".class") && !name.endsWith("package-info.class"))
          .map(name -> load(name.substring(0, name.length() - ".class".length()).replace('/', '.')))
          .filter(PublicApi::isSeen)
          .sorted(Comparator.comparing(Class::getName)).collect(Collectors.toUnmodifiableList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path root() {
    try {
      return Path.of(FloorPlanner.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Class<?> load(String name) {
    try {
      return Class.forName(name, false, PublicApi.class.getClassLoader());
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static boolean isSeen(Class<?> type) {
    return isSeen(type.getModifiers()) && !type.isAnonymousClass() && !type.isLocalClass()
        && (type.getEnclosingClass() == null || isSeen(type.getEnclosingClass()));
  }

  private static boolean isSeen(int modifiers) {
    return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
  }

  /** The lines of these types: a type's own line first, its members sorted. */
  static List<String> lines(Collection<Class<?>> types) {
    List<String> lines = new ArrayList<>();
    for (Class<?> type : types) {
      lines.add(type.getCanonicalName() + ": " + head(type));
      Set<String> members = new TreeSet<>();
      constants(type, members);
      components(type, members);
      for (Constructor<?> constructor : type.getDeclaredConstructors()) {
        if (isSeen(constructor.getModifiers()) && !constructor.isSynthetic()) {
          members.add("constructor " + variables(constructor) + parameters(constructor));
        }
      }
      methods(type).map(method -> "method " + modifiers(method.getModifiers()) + variables(method)
          + name(method.getGenericReturnType()) + " " + method.getName() + parameters(method)).forEach(members::add);
      members.forEach(member -> lines.add(type.getCanonicalName() + ": " + member));
    }
    return List.copyOf(lines);
  }

  private static String head(Class<?> type) {
    StringBuilder head = new StringBuilder(type.isAnnotationPresent(Deprecated.class) ? "deprecated " : "");
    if (Modifier.isProtected(type.getModifiers())) {
      head.append("protected ");
    }
    if (type.isInterface()) {
      head.append("interface");
    } else if (type.isEnum()) {
      head.append("enum");
    } else if (type.isRecord()) {
      head.append("record");
    } else {
      head.append(Modifier.isFinal(type.getModifiers()) ? "final class"
          : Modifier.isAbstract(type.getModifiers()) ? "abstract class" : "class");
    }
    head.append(variables(type.getTypeParameters()).stripTrailing());
    List<Type> parents = new ArrayList<>();
    parents(type, parents);
    if (!parents.isEmpty()) {
      head.append(" is ").append(parents.stream().map(PublicApi::name).distinct().sorted().collect(Collectors.joining(", ")));
    }
    if (type.isSealed()) {
      head.append(" sealed");
    }
    return head.toString();
  }

  /** Supertypes that callers can name; what a hidden one is, the type itself is. */
  private static void parents(Class<?> type, List<Type> to) {
    List<Type> above = new ArrayList<>(Arrays.asList(type.getGenericInterfaces()));
    if (type.getGenericSuperclass() != null && type.getSuperclass() != Object.class && !type.isRecord() && !type.isEnum()) {
      above.add(type.getGenericSuperclass());
    }
    for (Type parent : above) {
      Class<?> raw = parent instanceof Class<?> c ? c : (Class<?>) ((java.lang.reflect.ParameterizedType) parent).getRawType();
      if (isSeen(raw)) {
        to.add(parent);
      } else {
        parents(raw, to);
      }
    }
  }

  private static void constants(Class<?> type, Set<String> to) {
    for (Field field : type.getDeclaredFields()) {
      if (!isSeen(field.getModifiers()) || field.isSynthetic()) {
        continue;
      }
      to.add(field.isEnumConstant() ? "constant " + field.getName()
          : "field " + modifiers(field.getModifiers()) + name(field.getGenericType()) + " " + field.getName());
    }
  }

  private static void components(Class<?> type, Set<String> to) {
    if (type.isRecord()) {
      int place = 0;
      for (RecordComponent component : type.getRecordComponents()) {
        place++;
        to.add("component " + (place < 10 ? "0" : "") + place + " " + name(component.getGenericType()) + " " + component.getName());
      }
    }
  }

  /** The methods that the type declares or has from a hidden parent, less those that follow from what it is. */
  private static Stream<Method> methods(Class<?> type) {
    Set<String> follow = new TreeSet<>(OF_EVERY_OBJECT);
    if (type.isRecord()) {
      Arrays.stream(type.getRecordComponents()).forEach(component -> follow.add(component.getName() + "()"));
    }
    if (type.isEnum()) {
      follow.addAll(List.of("values()", "valueOf(java.lang.String)"));
    }
    return Stream.concat(Arrays.stream(type.getDeclaredMethods()),
            Arrays.stream(type.getMethods()).filter(method -> method.getDeclaringClass() != Object.class
                && method.getDeclaringClass().getName().startsWith("floorcalc.") && !isSeen(method.getDeclaringClass())))
        .filter(method -> isSeen(method.getModifiers()) && !method.isSynthetic() && !method.isBridge())
        .filter(method -> !follow.contains(method.getName() + parameters(method)));
  }

  private static String modifiers(int modifiers) {
    return (Modifier.isProtected(modifiers) ? "protected " : "") + (Modifier.isStatic(modifiers) ? "static " : "")
        + (Modifier.isAbstract(modifiers) ? "abstract " : "");
  }

  private static String variables(Executable unit) {
    return variables(unit.getTypeParameters());
  }

  private static String variables(TypeVariable<?>[] variables) {
    return variables.length == 0 ? "" : Arrays.stream(variables).map(PublicApi::variable).collect(Collectors.joining(", ", "<", "> "));
  }

  private static String variable(TypeVariable<?> variable) {
    String bounds = Arrays.stream(variable.getBounds()).filter(bound -> bound != Object.class).map(PublicApi::name)
        .collect(Collectors.joining(" & "));
    return variable.getName() + (bounds.isEmpty() ? "" : " extends " + bounds);
  }

  private static String parameters(Executable unit) {
    String thrown = Arrays.stream(unit.getGenericExceptionTypes()).map(PublicApi::name).sorted().collect(Collectors.joining(", "));
    return Arrays.stream(unit.getGenericParameterTypes()).map(PublicApi::name).collect(Collectors.joining(", ", "(", ")"))
        + (unit.isVarArgs() ? " varargs" : "") + (thrown.isEmpty() ? "" : " throws " + thrown);
  }

  private static String name(Type type) {
    return type.getTypeName().replace('$', '.');
  }
}
