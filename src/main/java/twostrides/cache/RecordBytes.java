package twostrides.cache;

import com.esotericsoftware.kryo.kryo5.Kryo;
import com.esotericsoftware.kryo.kryo5.KryoException;
import com.esotericsoftware.kryo.kryo5.io.Input;
import com.esotericsoftware.kryo.kryo5.io.Output;
import com.esotericsoftware.kryo.kryo5.objenesis.strategy.StdInstantiatorStrategy;
import com.esotericsoftware.kryo.kryo5.serializers.ImmutableCollectionsSerializers;
import com.esotericsoftware.kryo.kryo5.util.DefaultInstantiatorStrategy;
import com.esotericsoftware.kryo.kryo5.util.Pool;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Records as bytes, and back. Objects that hold each other do so again when they are read; what is
 * equal need not be one object any more. Only the types that the roots are made of are read and
 * written, so that bytes from elsewhere can make no other.
 *
 * @param <T> the root
 */
public final class RecordBytes<T> {

  /** What records hold of Java's own; lists that cannot be changed besides. */
  private static final List<Class<?>> OF_JAVA =
      List.of(
          ArrayList.class,
          HashMap.class,
          HashSet.class,
          LinkedHashMap.class,
          LinkedHashSet.class,
          TreeMap.class,
          TreeSet.class,
          Optional.class,
          OptionalInt.class,
          OptionalDouble.class,
          OptionalLong.class,
          LocalDate.class,
          double[].class);

  private static final int FIRST_SIZE = 64 * 1024;

  private final Class<T> root;
  private final List<Class<?>> types;
  private final Pool<Kryo> pool =
      new Pool<>(true, true) {
        @Override
        protected Kryo create() {
          return kryo();
        }
      };

  /**
   * For records of one kind.
   *
   * @param root what is written and read
   * @param arguments what fills the type variables of the root and of what it is made of
   */
  public RecordBytes(Class<T> root, Class<?>... arguments) {
    this.root = root;
    String ours = root.getName().substring(0, root.getName().indexOf('.') + 1);
    Set<Class<?>> found = new HashSet<>();
    find(root, ours, found);
    for (Class<?> c : arguments) {
      find(c, ours, found);
    }
    types = found.stream().sorted(Comparator.comparing(Class::getName)).toList();
  }

  private Kryo kryo() {
    Kryo kryo = new Kryo();
    kryo.setRegistrationRequired(true);
    kryo.setReferences(true);
    kryo.setInstantiatorStrategy(new DefaultInstantiatorStrategy(new StdInstantiatorStrategy()));
    ImmutableCollectionsSerializers.registerSerializers(kryo);
    OF_JAVA.forEach(kryo::register);
    types.forEach(kryo::register);
    return kryo;
  }

  /** The types of ours that a type is made of. */
  private static void find(Type type, String ours, Set<Class<?>> found) {
    if (type instanceof ParameterizedType p) {
      find(p.getRawType(), ours, found);
      for (Type a : p.getActualTypeArguments()) {
        find(a, ours, found);
      }
    } else if (type instanceof Class<?> c) {
      if (c.isArray()) {
        find(c.getComponentType(), ours, found);
      } else if (c.getName().startsWith(ours) && found.add(c)) {
        if (c.isSealed()) {
          for (Class<?> s : c.getPermittedSubclasses()) {
            find(s, ours, found);
          }
        }
        if (!c.isEnum()) {
          for (Field f : c.getDeclaredFields()) {
            if (!Modifier.isStatic(f.getModifiers())) {
              find(f.getGenericType(), ours, found);
            }
          }
        }
      }
    }
  }

  /**
   * Writes.
   *
   * @param what the root
   * @return its bytes
   * @throws IllegalArgumentException where it holds what its types do not say
   */
  public byte[] write(T what) {
    Kryo kryo = pool.obtain();
    try (Output out = new Output(FIRST_SIZE, -1)) {
      kryo.writeObject(out, what);
      return out.toBytes();
    } catch (KryoException e) {
      throw new IllegalArgumentException(e.getMessage(), e);
    } finally {
      pool.free(kryo);
    }
  }

  /**
   * Reads; empty where the bytes are none of these records.
   *
   * @param bytes what {@link #write} gave
   */
  public Optional<T> read(byte[] bytes) {
    Kryo kryo = pool.obtain();
    try (Input in = new Input(bytes)) {
      return Optional.of(kryo.readObject(in, root));
    } catch (RuntimeException e) {
      // Damaged, whatever the damage trips over first: it is read from its sheet again.
      return Optional.empty();
    } finally {
      pool.free(kryo);
    }
  }
}
