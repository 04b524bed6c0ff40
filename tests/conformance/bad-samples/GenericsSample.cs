// Code as it must not be in a device build: the rule against generics has to find every one of these.
using System;

namespace NanoDustSwitch.BadSamples
{
    public class GenericBox<T>
    {
        public T Content;
    }

    public class GenericsSample
    {
        public static T Same<T>(T value)
        {
            return value;
        }

        public static int CallsGenericMethod()
        {
            return Same(1);
        }

        public static object MakesGenericType()
        {
            return new GenericBox<int>();
        }

        // The device's library declares a few generic delegates all the same, so that this compiles.
        public static void TakesAction(Action<int> action)
        {
            action(1);
        }

        public static object MakesLambda()
        {
            var twice = (int number) => 2 * number;
            return twice;
        }

        public static object HoldsInArray()
        {
            return new GenericBox<string>[1];
        }

        public static Type NamesOpenType()
        {
            return typeof(Func<>);
        }
    }
}
