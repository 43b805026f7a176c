package floorcalc.examples;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Finds the codes of findings and judgements in the source: what is written where a {@code Finding}, a {@code Judgement} or a
 * {@code Check} is made, followed through the methods that hand a code on. A code that is put together in a way that
 * cannot be followed is {@linkplain #unclear() named}, so that none escapes.
 */
final class CodesInSource {
  /** What makes something with a code: the type, and the place of the code among its arguments. */
  private static final Map<Maker, String> FIRST = Map.of(new Maker("", "", "Finding", "new", 5, 0), "finding",
      new Maker("", "", "Judgement", "new", 8, 0), "check", new Maker("", "", "Check", "of", 6, 0), "check");

  /** A constructor or a method that takes a code: its package and file (empty: called from any), class, name, and where the code stands. */
  private record Maker(String home, String file, String owner, String name, int arguments, int place) {
    boolean isCalled(String fromHome, String fromFile, String qualifier, String called, int with) {
      return name.equals(called) && arguments == with && (home.isEmpty() || home.equals(fromHome))
          && (file.isEmpty() || file.equals(fromFile))
          && (qualifier.isEmpty() ? owner.equals(fromFile) || called.equals("new")
              : Character.isLowerCase(qualifier.charAt(0)) ? !called.equals("new") && !home.isEmpty() : qualifier.equals(owner));
    }
  }

  /** A code, the severity beside it if one is written there, and the words that stand in the same call. */
  record Use(String kind, String packageName, String severity, Set<String> words) implements Comparable<Use> {
    @Override
    public int compareTo(Use other) {
      return toString().compareTo(other.toString());
    }
  }

  private final List<CompilationUnitTree> files = new ArrayList<>();
  private final Map<String, Set<Use>> uses = new TreeMap<>();
  private final Set<String> unclear = new TreeSet<>();
  /** Makers found, each with the kind of thing that it makes in the end. */
  private final Map<Maker, String> makers = new LinkedHashMap<>(FIRST);
  /** The constants that hold a text, as {@code package.Class.NAME}. */
  private final Map<String, ExpressionTree> constants = new HashMap<>();

  CodesInSource(List<Path> roots) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<Path> sources = new ArrayList<>();
    for (Path root : roots) {
      try (Stream<Path> found = Files.walk(root)) {
        found.filter(file -> file.toString().endsWith(".java") && !file.endsWith("module-info.java")).sorted().forEach(sources::add);
      }
    }
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
      JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null,
          manager.getJavaFileObjectsFromPaths(sources));
      task.parse().forEach(files::add);
    }
    files.forEach(file -> file.getTypeDecls().forEach(type -> constantsOf(file, type)));
    for (int before = -1; before < makers.size();) {
      before = makers.size();
      uses.clear();
      unclear.clear();
      files.forEach(file -> new Search(file).scan(file, null));
    }
  }

  /** Notes the constants of a type that hold a text, and what a record with a code is made of. */
  private void constantsOf(CompilationUnitTree file, Tree type) {
    if (type instanceof ClassTree declared) {
      List<String> components = declared.getMembers().stream().filter(member -> member instanceof VariableTree)
          .map(member -> ((VariableTree) member).getName().toString()).toList();
      String name = declared.getSimpleName().toString();
      if (declared.getKind() == Tree.Kind.RECORD && components.contains("code") && FIRST.keySet().stream()
          .noneMatch(maker -> maker.owner().equals(name))) {
        makers.put(new Maker(String.valueOf(file.getPackageName()), nameOf(file), name, "new", components.size(), components.indexOf("code")), "finding");
      }
      for (Tree member : declared.getMembers()) {
        constantsOf(file, member);
        if (member instanceof VariableTree field && field.getType().toString().equals("String") && field.getInitializer() != null) {
          constants.put(file.getPackageName() + "." + declared.getSimpleName() + "." + field.getName(), field.getInitializer());
        }
      }
    }
  }

  private static String nameOf(CompilationUnitTree file) {
    return Path.of(file.getSourceFile().getName()).getFileName().toString().replace(".java", "");
  }

  Map<String, Set<Use>> uses() {
    return uses;
  }

  Set<String> unclear() {
    return unclear;
  }

  /** Looks at each call in a file. */
  private final class Search extends TreePathScanner<Void, Void> {
    private final CompilationUnitTree file;
    private final String home;
    private final String owner;
    private final Deque<MethodTree> methods = new ArrayDeque<>();
    private final Deque<ClassTree> classes = new ArrayDeque<>();

    Search(CompilationUnitTree file) {
      this.file = file;
      this.home = String.valueOf(file.getPackageName());
      this.owner = nameOf(file);
    }

    @Override
    public Void visitClass(ClassTree tree, Void none) {
      classes.push(tree);
      super.visitClass(tree, none);
      classes.pop();
      return null;
    }

    @Override
    public Void visitMethod(MethodTree tree, Void none) {
      methods.push(tree);
      super.visitMethod(tree, none);
      methods.pop();
      return null;
    }

    @Override
    public Void visitNewClass(NewClassTree tree, Void none) {
      String type = tree.getIdentifier().toString();
      call(type.substring(type.lastIndexOf('.') + 1), "new", tree.getArguments());
      return super.visitNewClass(tree, none);
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree tree, Void none) {
      if (tree.getMethodSelect() instanceof MemberSelectTree select) {
        String from = select.getExpression().toString();
        call(from.matches("\\w+") ? from : "value", select.getIdentifier().toString(), tree.getArguments());
      } else {
        call("", tree.getMethodSelect().toString(), tree.getArguments());
      }
      return super.visitMethodInvocation(tree, none);
    }

    private void call(String qualifier, String name, List<? extends ExpressionTree> arguments) {
      for (Map.Entry<Maker, String> maker : List.copyOf(makers.entrySet())) {
        if (maker.getKey().isCalled(home, owner, qualifier, name, arguments.size())) {
          String severity = arguments.stream().map(Tree::toString).filter(text -> text.matches("Severity\\.[A-Z]+"))
              .map(text -> text.substring(9).toLowerCase(Locale.ROOT)).findFirst().orElse("");
          read(arguments.get(maker.getKey().place()), maker.getValue(), severity, wordsOf(arguments));
        }
      }
    }

    private Set<String> wordsOf(List<? extends ExpressionTree> arguments) {
      Set<String> words = new TreeSet<>();
      TreeScanner<Void, Void> literals = new TreeScanner<>() {
        @Override
        public Void visitLiteral(LiteralTree literal, Void none) {
          if (literal.getValue() instanceof String text && text.contains(" ")) {
            words.add(text);
          }
          return null;
        }
      };
      arguments.forEach(argument -> literals.scan(argument, null));
      return words;
    }

    private void read(ExpressionTree code, String kind, String severity, Set<String> words) {
      if (code instanceof LiteralTree literal && literal.getValue() instanceof String text) {
        uses.computeIfAbsent(text, key -> new TreeSet<>()).add(new Use(kind, home, severity, words));
      } else if (code instanceof ConditionalExpressionTree either) {
        read(either.getTrueExpression(), kind, severity, words);
        read(either.getFalseExpression(), kind, severity, words);
      } else if (code instanceof ParenthesizedTree inner) {
        read(inner.getExpression(), kind, severity, words);
      } else if (constants.containsKey(home + "." + (code instanceof IdentifierTree ? owner + "." : "") + code)) {
        read(constants.get(home + "." + (code instanceof IdentifierTree ? owner + "." : "") + code), kind, severity, words);
      } else if (code instanceof BinaryTree sum && sum.getLeftOperand() instanceof LiteralTree front
          && sum.getRightOperand().toString().endsWith(".code()")) {
        uses.computeIfAbsent(front.getValue() + "...", key -> new TreeSet<>()).add(new Use(kind, home, severity, words));
      } else if (code instanceof IdentifierTree name && !methods.isEmpty()) {
        named(name.getName().toString(), kind, severity, words);
      } else if (code instanceof MethodInvocationTree call && call.getArguments().isEmpty()
          && call.toString().matches(".*\\b(code|text)\\(\\)")) {
        return; // handed on from another finding, or an enum's own
      } else {
        unclear.add(home + "." + owner + ": " + code);
      }
    }

    /** A parameter of the method, which then takes a code itself, or a variable with its first value. */
    private void named(String name, String kind, String severity, Set<String> words) {
      MethodTree method = methods.peek();
      for (int i = 0; i < method.getParameters().size(); i++) {
        if (method.getParameters().get(i).getName().contentEquals(name)) {
          boolean constructor = method.getReturnType() == null;
          makers.putIfAbsent(new Maker(home, "", constructor ? classes.peek().getSimpleName().toString() : owner,
              constructor ? "new" : method.getName().toString(), method.getParameters().size(), i), kind);
          return;
        }
      }
      List<ExpressionTree> values = new ArrayList<>();
      new TreePathScanner<Void, Void>() {
        @Override
        public Void visitVariable(VariableTree variable, Void none) {
          if (variable.getName().contentEquals(name) && variable.getInitializer() != null) {
            values.add(variable.getInitializer());
          }
          return super.visitVariable(variable, none);
        }
      }.scan(new TreePath(new TreePath(file), method), null);
      if (values.isEmpty()) {
        unclear.add(home + "." + owner + ": " + name);
      }
      values.forEach(value -> read(value, kind, severity, words));
    }
  }
}
