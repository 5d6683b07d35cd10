package org.straddle.architecture;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import com.github.javaparser.ast.CompilationUnit;
import com.github.javaparser.ast.Node;
import com.github.javaparser.ast.body.MethodDeclaration;
import com.github.javaparser.ast.body.VariableDeclarator;
import com.github.javaparser.ast.expr.AssignExpr;
import com.github.javaparser.ast.expr.BinaryExpr;
import com.github.javaparser.ast.expr.Expression;
import com.github.javaparser.ast.expr.MethodCallExpr;
import com.github.javaparser.ast.expr.StringLiteralExpr;

/** Finds where a source file asks its catalogues for texts, and what is wrong with how it asks. */
final class TextCalls {

    /** What findings say is written down as facts and said later, from the catalogue of the rules. */
    private static final String STATEMENTS = "org.straddle.check/messages";

    private final Path file;
    private final CompilationUnit unit;
    private final Map<String, String> catalogues = new HashMap<>();
    private final List<TextCall> calls = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    TextCalls(Path file) {
        this.file = file;
        this.unit = JavaSource.of(file);
        unit.findAll(VariableDeclarator.class).forEach(variable -> variable.getInitializer()
                .flatMap(this::catalogue).ifPresent(name -> catalogues.put(variable.getNameAsString(), name)));
        unit.findAll(AssignExpr.class).forEach(assignment -> catalogue(assignment.getValue())
                .ifPresent(name -> catalogues.put(last(assignment.getTarget()), name)));
        unit.findAll(MethodCallExpr.class).stream()
                .filter(call -> call.getNameAsString().equals("text") || call.getNameAsString().equals("has"))
                .forEach(this::read);
        unit.findAll(MethodCallExpr.class).stream().filter(call -> call.getNameAsString().equals("of")
                && call.getScope().filter(scope -> scope.toString().equals("Statement")).isPresent())
                .forEach(call -> read(call, STATEMENTS));
    }

    List<TextCall> calls() {
        return calls;
    }

    List<String> faults() {
        return faults;
    }

    /** The catalogue that {@code Catalogue.of(X.class)} opens, however it is taken on from there. */
    private Optional<String> catalogue(Expression value) {
        return value.findAll(MethodCallExpr.class).stream()
                .filter(call -> call.getNameAsString().equals("of")
                        && call.getScope().filter(scope -> scope.toString().equals("Catalogue")).isPresent())
                .findFirst().map(call -> folder(call.getArgument(0).toString().replace(".class", "")) + "/"
                        + (call.getArguments().size() > 1 ? call.getArgument(1).asStringLiteralExpr().asString() : "messages"));
    }

    private String folder(String type) {
        return unit.getImports().stream().map(line -> line.getNameAsString()).filter(name -> name.endsWith("." + type))
                .map(name -> name.substring(0, name.length() - type.length() - 1)).findFirst()
                .orElseGet(() -> unit.getPackageDeclaration().orElseThrow().getNameAsString());
    }

    private void read(MethodCallExpr call) {
        Optional<String> catalogue = call.getScope().flatMap(scope -> catalogue(scope)
                .or(() -> Optional.ofNullable(catalogues.get(last(scope)))));
        if (catalogue.isPresent() && !call.getArguments().isEmpty()) {
            read(call, catalogue.get());
        }
    }

    private void read(MethodCallExpr call, String catalogue) {
        Expression key = call.getArgument(0);
        List<String> keys = new ArrayList<>();
        List<String> prefixes = new ArrayList<>();
        for (StringLiteralExpr literal : key.findAll(StringLiteralExpr.class)) {
            boolean completed = literal.getParentNode().filter(BinaryExpr.class::isInstance).isPresent();
            (completed ? prefixes : keys).add(literal.asString());
        }
        boolean constants = keys.isEmpty() && prefixes.isEmpty();
        if (constants && isTextOfTheCaller(key)) {
            faults.add(where(call) + ": a key stands where its text is asked for, not in a caller: " + call);
        }
        calls.add(new TextCall(where(call), catalogue, keys, prefixes, constants,
                call.getNameAsString().equals("has") ? null : arguments(call)));
    }

    private static boolean isTextOfTheCaller(Expression key) {
        return key.isNameExpr() && key.findAncestor(MethodDeclaration.class).stream()
                .flatMap(method -> method.getParameters().stream())
                .anyMatch(parameter -> parameter.getNameAsString().equals(key.toString())
                        && parameter.getTypeAsString().equals("String"));
    }

    private static Set<String> arguments(MethodCallExpr call) {
        if (call.getArguments().size() == 2) {
            return null;
        }
        Set<String> names = new TreeSet<>();
        for (int i = 1; i < call.getArguments().size(); i += 2) {
            Expression name = call.getArgument(i);
            names.add(name.isStringLiteralExpr() ? name.asStringLiteralExpr().asString() : "(" + name + ")");
        }
        return names;
    }

    private static String last(Expression expression) {
        String text = expression.toString();
        return text.substring(text.lastIndexOf('.') + 1);
    }

    private String where(Node node) {
        return file.getFileName() + ":" + node.getBegin().map(position -> position.line).orElse(0);
    }
}
