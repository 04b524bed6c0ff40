[assembly: Parallelize(Scope = ExecutionScope.MethodLevel)]
