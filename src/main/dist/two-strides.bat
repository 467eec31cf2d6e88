@echo off
rem Starts the program; two-strides.jar lies beside this file. JAVA_HOME says which Java, if not the first on the path.
set "two_strides_java=java"
if defined JAVA_HOME set "two_strides_java=%JAVA_HOME%\bin\java"
rem Classes as Java had read them when this was built. A Java or a jar that they are not of goes on without, and says nothing.
set two_strides_classes=
if exist "%~dp0two-strides.jsa" set two_strides_classes=-XX:SharedArchiveFile="%~dp0two-strides.jsa" -Xlog:disable -Xlog:all=error:stderr
"%two_strides_java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:MaxNewSize=48m -XX:MinHeapFreeRatio=10 %two_strides_classes% -jar "%~dp0two-strides.jar" %*
