@echo off
rem Starts the program; two-strides.jar lies beside this file. JAVA_HOME says which Java, if not the first on the path.
set "two_strides_java=java"
if defined JAVA_HOME set "two_strides_java=%JAVA_HOME%\bin\java"
"%two_strides_java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:MaxNewSize=48m -XX:MinHeapFreeRatio=10 -jar "%~dp0two-strides.jar" %*
