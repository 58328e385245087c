package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;

/** Writes JSON as the description of the document says, one method for each type of field. */
final class DocumentWriter implements Type.Cases<Object, JsonNode> {

  private static final DocumentWriter WRITER = new DocumentWriter();

  private DocumentWriter() {}

  static <T> ObjectNode tree(Kind<T> kind, T value) {
    ObjectNode node = Json.NODES.objectNode();
    WRITER.fields(kind, value, node);
    return node;
  }

  private <T> void fields(Kind<T> kind, T value, ObjectNode node) {
    for (Field<T, ?> field : kind.fields()) {
      Object inner = field.of(value);
      if (field.always() || !inner.equals(field.orElse())) {
        node.set(field.key(), field.type().by(this, inner));
      }
    }
  }

  @Override
  public JsonNode text(Type.Text type, Object value) {
    return Json.NODES.textNode((String) value);
  }

  @Override
  public JsonNode flag(Type.Flag type, Object value) {
    return Json.NODES.booleanNode((Boolean) value);
  }

  @Override
  public JsonNode whole(Type.Whole type, Object value) {
    return Json.NODES.numberNode((Integer) value);
  }

  @Override
  public JsonNode weight(Type.Weight type, Object value) {
    double weight = (Double) value;
    boolean whole = weight == Math.rint(weight) && Math.abs(weight) < 1e15;
    return whole ? Json.NODES.numberNode((long) weight) : Json.NODES.numberNode(weight);
  }

  @Override
  public JsonNode word(Type.Word<?> type, Object value) {
    return Json.NODES.textNode(type.of(value));
  }

  @Override
  public JsonNode quantity(Type.Quantity type, Object value) {
    return Json.NODES.textNode(((Formula) value).text());
  }

  @Override
  public JsonNode place(Type.Place type, Object value) {
    ArrayNode place = Json.NODES.arrayNode();
    ((List<?>) value).forEach(f -> place.add(((Formula) f).text()));
    return place;
  }

  @Override
  public JsonNode ref(Type.Ref type, Object value) {
    return Json.NODES.textNode((String) value);
  }

  @Override
  public JsonNode list(Type.ListOf<?> type, Object value) {
    ArrayNode array = Json.NODES.arrayNode();
    ((List<?>) value).forEach(item -> array.add(type.item().by(this, item)));
    return array;
  }

  @Override
  public JsonNode maybe(Type.Maybe<?> type, Object value) {
    return type.inner().by(this, ((Optional<?>) value).orElseThrow());
  }

  @Override
  public JsonNode nested(Type.Nested<?> type, Object value) {
    return nestedIn(type.kind(), value);
  }

  @SuppressWarnings("unchecked")
  private <T> JsonNode nestedIn(Kind<T> kind, Object value) {
    T own = (T) value;
    return kind.isShort(own) ? shortly(kind.shortField().orElseThrow(), own) : tree(kind, own);
  }

  private <T> JsonNode shortly(Field<T, ?> field, T value) {
    return field.type().by(this, field.of(value));
  }

  @Override
  public JsonNode choice(Type.Choice<?> type, Object value) {
    return chosen(type, value);
  }

  @SuppressWarnings("unchecked")
  private <V> JsonNode chosen(Type.Choice<V> type, Object value) {
    V own = (V) value;
    ObjectNode node = Json.NODES.objectNode();
    node.put(type.key(), type.word().apply(own));
    fields(type.kind(own), own, node);
    return node;
  }

  @Override
  public JsonNode group(Type.Group<?> type, Object value) {
    ObjectNode group = Json.NODES.objectNode();
    ((Map<?, ?>) value)
        .forEach((name, item) -> group.set((String) name, type.item().by(this, item)));
    return group;
  }

  @Override
  public JsonNode vertex(Type.Vertices type, Object value) {
    Vertex vertex = (Vertex) value;
    if (vertex.pin() != null && !vertex.smooth() && vertex.reach().isEmpty()) {
      return Json.NODES.textNode(vertex.pin());
    }
    ArrayNode node = Json.NODES.arrayNode();
    if (vertex.pin() != null) {
      node.add(vertex.pin());
    } else {
      node.add(vertex.x().text()).add(vertex.z().text());
    }
    if (vertex.smooth()) {
      node.add(Type.Vertices.SMOOTH);
    }
    type.reach().ifPresent(kind -> vertex.reach().ifPresent(r -> node.add(tree(kind, r))));
    return node;
  }

  @Override
  public JsonNode outline(Type.Outlines type, Object value) {
    return value instanceof Outline.Traced traced
        ? tree(type.traced(), traced)
        : tree(type.drawn(), (Outline.Drawn) value);
  }
}
