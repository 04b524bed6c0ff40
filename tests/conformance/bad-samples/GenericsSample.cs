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

    /// <summary>What a device build may well have, so that the rule is seen to leave it alone.</summary>
    public class OrdinarySample
    {
        private readonly int[] _numbers = new int[4];

        public event EventHandler Changed;

        public string Describe(int index, out int number)
        {
            number = _numbers[index & 3];
            try
            {
                Changed?.Invoke(this, null);
            }
            catch (ArgumentException exception)
            {
                return exception.Message;
            }

            return $"{number} of {_numbers.Length}";
        }
    }
}
